import type {Point} from './chart-path.ts';

/** A rectangle on paper, in millimetres. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A point in a box: from 0,0 at its upper left to 1,1 at its lower right. */
export function inBox({x, y, width, height}: Box, across: number, down: number): Point {
  return [x + across * width, y + down * height];
}
