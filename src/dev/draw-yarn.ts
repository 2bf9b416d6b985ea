/** Colours of the yarns in the drawings. */
export const dyes = {
  oatmeal: '#d9c9a8',
  chalk: '#ebe5d6',
  'slate blue': '#64798f',
  'moss green': '#76854c',
  'rose hip': '#b4504a',
  'sea glass': '#93b8a8',
  'deep water': '#2f4a6b',
  bramble: '#853452',
  peat: '#7a5a43',
  'fleece grey': '#b0aea6',
  heather: '#927f9f',
} as const;

/** A point in pixels of the picture, y running down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A colour made lighter (above 0) or darker (below 0), by up to 1. */
export function shade(colour: string, by: number): string {
  const target = by > 0 ? 255 : 0;
  const parts = [1, 3, 5].map((start) => {
    const value = Number.parseInt(colour.slice(start, start + 2), 16);
    return Math.round(value + (target - value) * Math.abs(by))
      .toString(16)
      .padStart(2, '0');
  });
  return `#${parts.join('')}`;
}

/** A number from -1 to 1 that looks random and is the same for the same seed: hand knitting is never quite even. */
export function unevenness(seed: number): number {
  const mixed = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b);
  const again = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
  return ((again ^ (again >>> 16)) >>> 0) / 0x7fffffff - 1;
}

/** A length of yarn along an SVG path: dark rim, body, light back and the plies across it. */
export function drawYarn(path: string, colour: string, thickness: number, rim = 0.16): string {
  const line = (stroke: string, width: number, more = '') =>
    `<path d="${path}" stroke="${stroke}" stroke-width="${round(width)}"${more}/>`;
  const ply = `stroke-dasharray="${round(thickness * 0.2)} ${round(thickness * 0.3)}"`;
  const layers = [
    line(shade(colour, -0.5), thickness * (1 + rim)),
    line(colour, thickness * 0.9),
    line(shade(colour, 0.35), thickness * 0.42, ' opacity="0.45"'),
  ];
  // In a small picture the plies are too fine to be seen.
  if (thickness > 11)
    layers.push(line(shade(colour, -0.4), thickness * 0.84, ` opacity="0.2" stroke-linecap="butt" ${ply}`));
  return layers.join('');
}

/** A number short enough for a path. */
export function round(value: number): number {
  return Math.round(value * 10) / 10;
}

export function pathThrough(start: Point, first: Point, second: Point, end: Point): string {
  const at = (point: Point) => `${round(point.x)} ${round(point.y)}`;
  return `M${at(start)}C${at(first)} ${at(second)} ${at(end)}`;
}
