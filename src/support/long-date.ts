const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** `2026-06-22` → `22 June 2026` in British, `June 22, 2026` in American English; other text is left as it is. */
export function longDate(date: string, language: 'en-GB' | 'en-US'): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date) ?? [];
  const name = months[Number(month) - 1];
  if (year === undefined || name === undefined) return date;
  return language === 'en-US' ? `${name} ${Number(day)}, ${year}` : `${Number(day)} ${name} ${year}`;
}
