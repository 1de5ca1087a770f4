import { clamp, mix } from './noise';

/** Red, green, blue, 0…255. */
export type Rgb = readonly [number, number, number];

export const rgb = (hex: string): Rgb => [
  parseInt(hex.slice(1, 3), 16),
  parseInt(hex.slice(3, 5), 16),
  parseInt(hex.slice(5, 7), 16),
];

export const css = (color: Rgb, alpha = 1): string =>
  `rgba(${String(Math.round(color[0]))},${String(Math.round(color[1]))},${String(Math.round(color[2]))},${alpha.toFixed(3)})`;

/** Tones of one material from shade to full light. */
export type Stops = readonly (readonly [number, Rgb])[];

/** A material's tones as a table of 256 entries, three bytes each: the shader looks light up in it. */
export const toneTable = (stops: Stops): Float32Array => {
  const table = new Float32Array(256 * 3);
  for (let i = 0; i < 256; i++) table.set(toneAt(stops, i / 255), i * 3);
  return table;
};

export const toneAt = (stops: Stops, light: number): Rgb => {
  const t = clamp(light);
  const next = stops.findIndex(([at]) => t <= at);
  if (next <= 0) return (stops[next < 0 ? stops.length - 1 : 0] as Stops[number])[1];
  const [a, from] = stops[next - 1] as Stops[number];
  const [b, to] = stops[next] as Stops[number];
  const k = (t - a) / (b - a);
  return [mix(from[0], to[0], k), mix(from[1], to[1], k), mix(from[2], to[2], k)];
};
