import type {Span} from '../../support/result.ts';
import type {WorkStep} from './row-syntax.ts';
import {makeStitch} from './stitch-makers.ts';

const stitch = makeStitch(
  {american: 'draw yarn through', words: 'draw the end of the yarn through the stitches'},
  {uses: 1, makes: 0, kind: 'bind off', hand: 'none', face: {shape: 'bound off'}},
);

/** The end of the yarn goes through all the stitches, which come off the needle. */
export function drawThrough(span: Span): WorkStep {
  return {kind: 'work', stitch, extent: {kind: 'to end'}, yarn: null, isDoubtful: false, span};
}
