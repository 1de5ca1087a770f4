import { createMp3Encoder } from 'wasm-media-encoders';
import { rate, type Signal } from './synth/signal';

/** Bits a second of the kept file, thousands: enough for sounds that are mostly noise and short. */
const kilobits = 40;

/** A strip as sixteen-bit numbers, low byte first: what a digest is taken of. */
export const sixteenBits = (strip: Signal): Uint8Array => {
  const bytes = new DataView(new ArrayBuffer(2 * strip.length));
  strip.forEach((value, i) => bytes.setInt16(2 * i, Math.round(value * 32767), true));
  return new Uint8Array(bytes.buffer);
};

/** A strip as an MP3 file, one channel. The same strip gives the same bytes. */
export const encoded = async (strip: Signal): Promise<Uint8Array> => {
  const encoder = await createMp3Encoder();
  encoder.configure({ sampleRate: rate, channels: 1, bitrate: kilobits });
  // Each part belongs to the encoder until it is copied.
  const parts = [Uint8Array.from(encoder.encode([Float32Array.from(strip)]))];
  parts.push(Uint8Array.from(encoder.finalize()));
  return Uint8Array.from(parts.flatMap((part) => [...part]));
};
