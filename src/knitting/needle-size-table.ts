import type {Fraction} from './fraction.ts';
import {quarters} from './quarters.ts';
import {type Millimetres, millimetres} from './units.ts';

/** One needle thickness and what the American and the old British system call it; null where they have no such size. */
export interface NeedleSizeRow {
  readonly millimetres: Millimetres;
  readonly us: string | null;
  readonly uk: string | null;
}

/**
 * Needle sizes from the thinnest to the thickest: eight public conversion tables compared. Millimetres are the only
 * exact column. US numbers rise with the diameter, the old UK numbers fall. The sizes without a number occur in
 * millimetres in some of the tables.
 */
export const needleSizeTable: readonly NeedleSizeRow[] = [
  needle(1, null, null),
  needle(1.25, null, null),
  needle(1.5, null, null),
  needle(1.75, null, null),
  needle(2, '0', '14'),
  needle(2.25, '1', '13'),
  needle(2.5, '1.5', null),
  needle(2.75, '2', '12'),
  needle(3, null, '11'),
  needle(3.25, '3', '10'),
  needle(3.5, '4', null),
  needle(3.75, '5', '9'),
  needle(4, '6', '8'),
  needle(4.5, '7', '7'),
  needle(5, '8', '6'),
  needle(5.5, '9', '5'),
  needle(6, '10', '4'),
  needle(6.5, '10.5', '3'),
  needle(7, null, '2'),
  needle(7.5, null, '1'),
  needle(8, '11', '0'),
  needle(9, '13', '00'),
  needle(10, '15', '000'),
  needle(12, null, null),
  needle(12.75, '17', null),
  needle(15, '19', null),
  needle(16, null, null),
  needle(19, '35', null),
  needle(20, null, null),
  needle(25, '50', null),
];

/**
 * US numbers on which the eight tables disagree, with every thickness that is claimed for them. A single thickness
 * means that the other tables have no such size.
 */
export const disputedUsSizes: ReadonlyMap<string, readonly Fraction[]> = new Map([
  ['00000', [quarters(1)]],
  ['0000', [quarters(1), quarters(1.25)]],
  ['000', [quarters(1.25), quarters(1.5)]],
  ['00', [quarters(1.5), quarters(1.75)]],
  ['1.5', [quarters(2.5)]],
  ['2.5', [quarters(3)]],
  ['17', [quarters(12), quarters(12.75)]],
  ['19', [quarters(15), quarters(16)]],
  ['35', [quarters(19), quarters(20)]],
  ['36', [quarters(20)]],
]);

function needle(diameter: number, us: string | null, uk: string | null): NeedleSizeRow {
  return {millimetres: millimetres(quarters(diameter)), us, uk};
}
