import type {Face} from '../knitting/rows/face.ts';
import {type Box, inBox} from './chart-box.ts';
import {crossingMark} from './chart-crossing-mark.ts';
import type {Mark} from './chart-mark.ts';
import {bow, circle, stroke} from './chart-path.ts';

/**
 * The symbol of a stitch as seen from the right side, drawn by us in the sense published for the trade: blank for knit,
 * a short bar for purl, an open ring for a yarn over, strokes that lean as the decrease leans, bands that cross.
 */
export function markOf(face: Face, box: Box): Mark {
  switch (face.shape) {
    case 'loop':
      return ink((face.surface === 'purl' ? purlBar(box) : '') + (face.twisted ? crossedLegs(box) : ''));
    case 'loop below':
      return ink(pillar(box) + (face.surface === 'purl' ? footBar(box) : ''));
    case 'slip':
      return ink(
        path(box, [0.3, 0.15], [0.5, 0.85], [0.7, 0.15]) + (face.yarn === 'front' ? middleBar(box) : ''),
      );
    case 'hole':
      return {...ink(''), over: ring(box, face.loops)};
    case 'decrease':
      return ink(decrease(face, box));
    case 'increase':
      return ink(increase(face, box));
    case 'crossing':
      return crossingMark(face, box);
    case 'bobble':
      return {...ink(''), solid: circle(inBox(box, 0.5, 0.5), 0.32 * shorter(box))};
    case 'bound off':
      return ink(bow(inBox(box, 0.15, 0.7), inBox(box, 0.5, 0), inBox(box, 0.85, 0.7)));
    case 'cast on':
      return ink(bow(inBox(box, 0.15, 0.3), inBox(box, 0.5, 1), inBox(box, 0.85, 0.3)));
    case 'dropped':
      return ink(path(box, [0.5, 0.12], [0.5, 0.88]) + path(box, [0.3, 0.6], [0.5, 0.88], [0.7, 0.6]));
    case 'as below':
    case 'texture':
      return ink(path(box, [0.3, 0.4], [0.7, 0.4]) + path(box, [0.3, 0.6], [0.7, 0.6]));
    case 'own':
      return ink(path(box, [0.5, 0.2], [0.75, 0.5], [0.5, 0.8], [0.25, 0.5], [0.5, 0.2]));
  }
}

function ink(lines: string): Mark {
  return {lines, solid: '', over: ''};
}

function path(box: Box, ...points: readonly (readonly [number, number])[]): string {
  return stroke(...points.map(([across, down]) => inBox(box, across, down)));
}

function purlBar(box: Box): string {
  return path(box, [0.25, 0.5], [0.75, 0.5]);
}

function middleBar(box: Box): string {
  return path(box, [0.2, 0.5], [0.8, 0.5]);
}

function footBar(box: Box): string {
  return path(box, [0.3, 0.9], [0.7, 0.9]);
}

/** The two legs of the loop cross at its foot. */
function crossedLegs(box: Box): string {
  const [left, right] = [inBox(box, 0.35, 0.88), inBox(box, 0.65, 0.88)];
  return (
    bow(left, inBox(box, 0.95, 0.2), inBox(box, 0.5, 0.14)) +
    bow(right, inBox(box, 0.05, 0.2), inBox(box, 0.5, 0.14))
  );
}

/** A loop drawn up from the row below. */
function pillar(box: Box): string {
  return path(box, [0.38, 0.9], [0.38, 0.3], [0.5, 0.12], [0.62, 0.3], [0.62, 0.9]);
}

function ring(box: Box, loops: number): string {
  const radius = 0.32 * shorter(box);
  if (loops < 2) return circle(inBox(box, 0.5, 0.5), radius);
  return circle(inBox(box, 0.3, 0.5), radius * 0.6) + circle(inBox(box, 0.7, 0.5), radius * 0.6);
}

function decrease({from, lean, surface, twisted}: Extract<Face, {shape: 'decrease'}>, box: Box): string {
  const flip = (across: number) => (lean === 'left' ? 1 - across : across);
  const to = (...points: readonly (readonly [number, number])[]) =>
    path(box, ...points.map(([across, down]) => [flip(across), down] as const));
  const strokes =
    lean === 'centre'
      ? path(box, [0.15, 0.85], [0.5, 0.15], [0.85, 0.85]) + path(box, [0.5, 0.15], [0.5, 0.85])
      : to([0.18, 0.86], [0.82, 0.14]) + extraFeet(from, to);
  const more = lean === 'centre' && from > 3 ? path(box, [0.33, 0.85], [0.5, 0.15], [0.67, 0.85]) : '';
  return (
    strokes +
    more +
    (surface === 'purl' ? footBar(box) : '') +
    (twisted ? path(box, [0.38, 0.3], [0.62, 0.7]) : '')
  );
}

type Draw = (...points: readonly (readonly [number, number])[]) => string;

/** One foot for each stitch beyond two; all run up to the leaning stroke. */
function extraFeet(from: number, to: Draw): string {
  let feet = '';
  for (let foot = 0; foot < Math.min(from - 2, 4); foot++) {
    const across = 0.82 - 0.16 * foot;
    feet += to([across, 0.86], [0.62 - 0.12 * foot, 0.37 + 0.135 * foot]);
  }
  return feet;
}

function increase({into, lean, surface, method}: Extract<Face, {shape: 'increase'}>, box: Box): string {
  const foot = surface === 'purl' ? footBar(box) : '';
  if (method === 'bar' || method === 'many') {
    const count = Math.max(2, Math.min(into, 9));
    let fan = '';
    for (let top = 0; top < count; top++) {
      fan += path(box, [0.5, 0.82], [(top + 0.5) / count, 0.15]);
    }
    return fan + foot + (method === 'bar' ? path(box, [0.35, 0.82], [0.65, 0.82]) : '');
  }
  const below = method === 'below' ? path(box, [0.38, 0.72], [0.62, 0.72]) : '';
  const right = path(box, [0.5, 0.55], [0.8, 0.14]);
  const left = path(box, [0.5, 0.55], [0.2, 0.14]);
  const stem = path(box, [0.5, 0.86], [0.5, lean === null ? 0.55 : 0.14]);
  return stem + (lean === 'left' ? '' : right) + (lean === 'right' ? '' : left) + below + foot;
}

function shorter({width, height}: Box): number {
  return Math.min(width, height);
}
