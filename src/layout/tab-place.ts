import type {Paper} from './paper.ts';
import {unprintableRim} from './paper.ts';

/** Which of how many tabs, counted from 1. */
export interface TabNumber {
  readonly number: number;
  readonly of: number;
}

/** A rectangle in millimetres from the top left corner of the sheet. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const fromTop = 24;
const depth = 11;
/** Fewer tabs than this are no longer than a fifth of the edge. */
const fewestPlaces = 5;

/** What a tab's drawing leaves free to the next one, and how far its ends slope; its text stands clear of the slopes. */
export const tabShape = {gap: 1, bevel: 2.5} as const;

/** Where tab k of n stands at the outer edge of a right-hand page, printable rim left free. */
export function tabPlace({number, of}: TabNumber, paper: Paper): Rectangle {
  const height = (paper.height - 2 * fromTop) / Math.max(of, fewestPlaces);
  return {
    x: paper.width - unprintableRim - depth,
    y: fromTop + (number - 1) * height,
    width: depth,
    height,
  };
}
