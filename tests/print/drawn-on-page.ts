import {getDocument, OPS, VerbosityLevel} from 'pdfjs-dist/legacy/build/pdf.mjs';

/**
 * A line or shape that a page draws: its colour and what it covers, in millimetres from the page's top left. Each line is
 * one; a shape that is filled is one however many parts it has, as all dashes of a dashed line are.
 */
export interface DrawnPath {
  readonly colour: string;
  readonly isFilled: boolean;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A run of text: where its base line begins and how far it reaches along it, in millimetres from the page's top left. */
export interface DrawnText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Its direction: 0 to the right, 90 downwards, 180 upside down. */
  readonly degrees: number;
  readonly size: number;
}

/** What a picture covers, in millimetres from the page's top left. */
export type DrawnImage = Omit<DrawnPath, 'colour' | 'isFilled'>;

export interface DrawnPage {
  readonly paths: readonly DrawnPath[];
  readonly images: readonly DrawnImage[];
  readonly texts: readonly DrawnText[];
}

type Matrix = readonly [number, number, number, number, number, number];
const millimetresPerPoint = 25.4 / 72;
/** How many numbers follow each path operator of pdf.js: move, line, curve, quadratic curve, close. */
const operandCounts = [2, 2, 6, 4, 0];

/** What a reader of PDFs that is not ours, pdf.js, finds drawn on each page; clips are left out. */
export async function drawnOnPages(bytes: Uint8Array): Promise<readonly DrawnPage[]> {
  const loading = getDocument({
    data: Uint8Array.from(bytes),
    isEvalSupported: false,
    verbosity: VerbosityLevel.ERRORS,
  });
  const document = await loading.promise;
  const pages: DrawnPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const height = (page.view[3] ?? 0) - (page.view[1] ?? 0);
    const {fnArray, argsArray} = await page.getOperatorList();
    const {items} = await page.getTextContent();
    pages.push({
      ...drawnShapes(fnArray, argsArray, height),
      texts: items.flatMap((item) => {
        if (!('str' in item) || item.str.trim() === '') return [];
        const [a = 0, b = 0, , , x = 0, y = 0] = item.transform as number[];
        return [
          {
            text: item.str,
            x: x * millimetresPerPoint,
            y: (height - y) * millimetresPerPoint,
            width: item.width * millimetresPerPoint,
            degrees: (Math.round((Math.atan2(-b, a) * 180) / Math.PI) + 360) % 360,
            size: Math.hypot(a, b),
          },
        ];
      }),
    });
  }
  await loading.destroy();
  return pages;
}

function drawnShapes(
  operators: readonly number[],
  operands: readonly unknown[],
  pageHeight: number,
): Pick<DrawnPage, 'paths' | 'images'> {
  const paths: DrawnPath[] = [];
  const images: DrawnImage[] = [];
  const saved: {matrix: Matrix; colour: string}[] = [];
  let state: {matrix: Matrix; colour: string} = {matrix: [1, 0, 0, 1, 0, 0], colour: '#000000'};
  operators.forEach((operator, index) => {
    const given = operands[index] as readonly unknown[];
    if (operator === OPS.save) saved.push(state);
    else if (operator === OPS.restore) state = saved.pop() ?? state;
    else if (operator === OPS.transform)
      state = {...state, matrix: times(state.matrix, given as unknown as Matrix)};
    else if (operator === OPS.setStrokeRGBColor) state = {...state, colour: String(given[0])};
    else if (operator === OPS.constructPath && (given[0] === OPS.stroke || given[0] === OPS.fill)) {
      const isFilled = given[0] === OPS.fill;
      const [data] = given[1] as readonly [ArrayLike<number>];
      const parts = subpaths(Array.from(data));
      for (const points of isFilled ? [parts.flat()] : parts) {
        paths.push({colour: state.colour, isFilled, ...boxAround(points, state.matrix, pageHeight)});
      }
    } else if (operator === OPS.paintImageXObject) {
      // An image fills the unit square (ISO 32000-1, 8.9.5.1).
      const corners = [
        [0, 0],
        [1, 1],
      ] as const;
      images.push(boxAround(corners, state.matrix, pageHeight));
    }
  });
  return {paths, images};
}

function boxAround(
  points: readonly (readonly [number, number])[],
  matrix: Matrix,
  pageHeight: number,
): DrawnImage {
  const placed = points.map((point) => apply(matrix, point));
  const [xs, ys] = [placed.map(([x]) => x), placed.map(([, y]) => pageHeight - y)];
  return {
    left: Math.min(...xs) * millimetresPerPoint,
    top: Math.min(...ys) * millimetresPerPoint,
    right: Math.max(...xs) * millimetresPerPoint,
    bottom: Math.max(...ys) * millimetresPerPoint,
  };
}

function subpaths(data: readonly number[]): readonly (readonly (readonly [number, number])[])[] {
  const found: [number, number][][] = [];
  for (let at = 0; at < data.length; ) {
    const operator = data[at] ?? 0;
    const count = operandCounts[operator] ?? 0;
    const points = Array.from({length: count / 2}, (_, point): [number, number] => [
      data[at + 1 + 2 * point] ?? 0,
      data[at + 2 + 2 * point] ?? 0,
    ]);
    if (operator === 0) found.push(points);
    else found.at(-1)?.push(...points);
    at += 1 + count;
  }
  return found;
}

/** The matrix that applies `inner` first (ISO 32000-1, 8.3.4). */
function times([a, b, c, d, e, f]: Matrix, inner: Matrix): Matrix {
  const [p, q, r, s, t, u] = inner;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}

function apply([a, b, c, d, e, f]: Matrix, [x, y]: readonly [number, number]): readonly [number, number] {
  return [a * x + c * y + e, b * x + d * y + f];
}
