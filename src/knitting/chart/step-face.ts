import {type Face, type Side, seenFromBehind} from '../rows/face.ts';
import type {Step} from '../rows/row-syntax.ts';

/** How a step that is worked on `side` looks from the right side. */
export function faceOfStep(step: Step, side: Side, uses: number, makes: number): Face {
  const face = faceWorked(step, side, uses, makes);
  return side === 'RS' ? face : seenFromBehind(face);
}

/** As seen by the knitter who works it. */
function faceWorked(step: Step, side: Side, uses: number, makes: number): Face {
  switch (step.kind) {
    case 'work': {
      const {face} = step.stitch;
      if (face.shape === 'slip') return {...face, yarn: step.yarn ?? face.yarn};
      return face.shape === 'texture' ? surfaceOf(face.texture, side) : face;
    }
    case 'into':
      return {shape: 'increase', from: uses, into: makes, lean: null, surface: 'knit', method: 'many'};
    case 'pass over':
      return makes === 1
        ? {shape: 'decrease', from: uses, into: 1, lean: 'left', surface: 'knit', twisted: false}
        : {shape: 'own', from: uses, into: makes};
    case 'bind off':
      return {shape: 'bound off'};
    case 'cast on':
      return {shape: 'cast on'};
    default:
      return {shape: 'own', from: uses, into: makes};
  }
}

/** Stockinette is knitted on the right side and purled on the wrong side; garter is knitted on both. */
function surfaceOf(texture: 'stockinette' | 'reverse stockinette' | 'garter', side: Side): Face {
  const isKnit = texture === 'garter' || (texture === 'stockinette') === (side === 'RS');
  return {shape: 'loop', surface: isKnit ? 'knit' : 'purl', twisted: false};
}
