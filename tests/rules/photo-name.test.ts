import {expect, test} from 'vitest';
import {photoName, photoNameOfUrl} from '../../src/model/photo-name.ts';

test.each([
  ['front.jpg', 'front.jpg'],
  ['./front.jpg', 'front.jpg'],
  ['photos/front.jpg', 'front.jpg'],
  ['../photos/front.jpg', 'front.jpg'],
  ['../../content/photos/front.jpg', 'front.jpg'],
  ['s07/front.jpg', 's07/front.jpg'],
  ['100 %20.jpg', '100 %20.jpg'],
  ['Stra\u0308hne.jpg', 'Str\u00e4hne.jpg'],
  ['front..jpg', 'front..jpg'],
  ['', null],
  ['photos/', null],
  ['../front.jpg', null],
  ['photos/../binder.yaml', null],
  ['..\\front.jpg', null],
  ['/home/marit/front.jpg', null],
  ['C:\\Users\\marit\\front.jpg', null],
  ['https://example.org/front.jpg', null],
  ['file:front.jpg', null],
])('the photo written `%s` is %j', (written, name) => {
  expect(photoName(written)).toBe(name);
});

test.each([
  ['../photos/the%20front%20%231.jpg', 'the front #1.jpg'],
  ['Str%C3%A4hne.jpg', 'Str\u00e4hne.jpg'],
  ['%2e%2e%2fbinder.yaml', null],
  ['100%.jpg', '100%.jpg'],
  ['%ff.jpg', '%ff.jpg'],
])('the photo at the address `%s` is %j', (url, name) => {
  expect(photoNameOfUrl(url)).toBe(name);
});
