import { deflateSync } from 'node:zlib';
import { PNG } from 'pngjs';

/** A picture in at most 256 colors, a third of its size: what the README shows is loaded by everybody. */

/** A color that occurs, to 6 bits a channel: what its pixels add up to, and how many they are. */
type Tone = { readonly sum: [number, number, number]; count: number };
type Box = readonly (readonly [bin: number, tone: Tone])[];

const channels = [0, 1, 2] as const;
const most = 256;

const binAt = (data: Uint8Array, i: number): number =>
  channels.reduce<number>((bin, c) => (bin << 6) | ((data[i + c] ?? 0) >> 2), 0);

const tonesOf = (data: Uint8Array): Map<number, Tone> => {
  const tones = new Map<number, Tone>();
  for (let i = 0; i < data.length; i += 4) {
    const bin = binAt(data, i);
    const tone = tones.get(bin) ?? { sum: [0, 0, 0], count: 0 };
    for (const c of channels) tone.sum[c] += data[i + c] ?? 0;
    tone.count++;
    tones.set(bin, tone);
  }
  return tones;
};

const part = ({ sum, count }: Tone, c: (typeof channels)[number]): number => sum[c] / count;

/** How much a box spreads in its widest channel; what many pixels have counts for more. */
const spread = (box: Box): { readonly widest: (typeof channels)[number]; readonly weight: number } => {
  const wide = channels.map((c) => {
    const values = box.map(([, tone]) => part(tone, c));
    return values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b));
  });
  const width = Math.max(...wide);
  const count = box.reduce((all, [, tone]) => all + tone.count, 0);
  return { widest: channels[wide.indexOf(width)] ?? 0, weight: width * width * Math.sqrt(count) };
};

/** Cuts a box where half its pixels lie on each side. */
const halves = (box: Box): readonly [Box, Box] => {
  const { widest } = spread(box);
  const sorted = [...box].sort(([, a], [, b]) => part(a, widest) - part(b, widest));
  const half = sorted.reduce((all, [, tone]) => all + tone.count, 0) / 2;
  let passed = 0;
  const at = sorted.findIndex(([, tone]) => (passed += tone.count) >= half);
  const cut = Math.min(Math.max(at, 1), sorted.length - 1);
  return [sorted.slice(0, cut), sorted.slice(cut)];
};

const boxesOf = (tones: Map<number, Tone>): readonly Box[] => {
  const boxes = [[...tones]].map((box: Box) => ({ box, weight: spread(box).weight }));
  while (boxes.length < most) {
    boxes.sort((a, b) => b.weight - a.weight);
    const [widest] = boxes;
    if (!widest || widest.weight === 0) break;
    boxes.splice(0, 1, ...halves(widest.box).map((box) => ({ box, weight: spread(box).weight })));
  }
  return boxes.map(({ box }) => box);
};

const averageOf = (box: Box): readonly number[] => {
  const count = box.reduce((all, [, tone]) => all + tone.count, 0);
  return channels.map((c) => Math.round(box.reduce((all, [, { sum }]) => all + sum[c], 0) / count));
};

/** The check of a chunk, as the format defines it. */
const crcOf = (bytes: Uint8Array): number => {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let k = 0; k < 8; k++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
};

const chunk = (name: string, body: Uint8Array): Buffer => {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), body]);
  const ends = Buffer.alloc(8);
  ends.writeUInt32BE(body.length, 0);
  ends.writeUInt32BE(crcOf(named), 4);
  return Buffer.concat([ends.subarray(0, 4), named, ends.subarray(4)]);
};

/** The same picture with a palette. */
export const smallPng = (picture: Buffer): Buffer => {
  const { width, height, data } = PNG.sync.read(picture);
  const boxes = boxesOf(tonesOf(data));
  const indexOf = new Map(boxes.flatMap((box, i) => box.map(([bin]) => [bin, i] as const)));
  const rows = Buffer.alloc((width + 1) * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      rows[y * (width + 1) + 1 + x] = indexOf.get(binAt(data, (y * width + x) * 4)) ?? 0;
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 3, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', head),
    chunk('PLTE', Buffer.from(boxes.flatMap(averageOf))),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
};
