/**
 * Relative luminance of a colour, 0 for black to 1 for white: how light it prints in greyscale.
 * Source: W3C, Web Content Accessibility Guidelines (WCAG) 2.2, definition of "relative luminance".
 * `hex` is `#rrggbb`.
 */
export function relativeLuminance(hex: string): number {
  const channel = (at: number) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

/** 1 (the same grey) to 21 (black on white). Source: WCAG 2.2, definition of "contrast ratio". */
export function contrastRatio(a: string, b: string): number {
  const [darker = 0, lighter = 0] = [relativeLuminance(a), relativeLuminance(b)].sort((x, y) => x - y);
  return (lighter + 0.05) / (darker + 0.05);
}
