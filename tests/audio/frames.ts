/** The frames of an MP3 file, read by their heads (ISO/IEC 13818-3): layer III at the lower rates. */

const kilobits = [0, 8, 16, 24, 32, 40, 48, 56, 64, 80, 96, 112, 128, 144, 160] as const;
const hertzes = [22_050, 24_000, 16_000] as const;
const samplesAFrame = 576;

/** How many channels, at what rate, and how many samples its sounding frames come to. Throws at what is no such file. */
export const framesOf = (
  file: Uint8Array,
): { readonly channels: number; readonly hertz: number; readonly samples: number } => {
  let [at, frames, channels, hertz] = [0, 0, 0, 0];
  while (at + 4 <= file.length) {
    const [sync = 0, version = 0, rates = 0, mode = 0] = file.subarray(at, at + 4);
    if (sync !== 0xff || (version & 0xfe) !== 0xf2) throw new Error(`no frame at byte ${at}`);
    const bits = kilobits[rates >> 4];
    const speed = hertzes[(rates >> 2) & 3];
    if (!bits || !speed) throw new Error(`a frame of no known rate at byte ${at}`);
    const long = Math.floor((72_000 * bits) / speed) + ((rates >> 1) & 1);
    // The first frame may hold a note of the encoder instead of sound.
    const note = /Xing|Info/.test(String.fromCharCode(...file.subarray(at, at + Math.min(long, 64))));
    if (!note) frames++;
    [channels, hertz] = [mode >> 6 === 3 ? 1 : 2, speed];
    at += long;
  }
  if (at !== file.length) throw new Error('the last frame is cut short');
  return { channels, hertz, samples: frames * samplesAFrame };
};
