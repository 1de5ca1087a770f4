/** The face that drawings letter in. Without it they fall back and are drawn anyway. */
const faces = ['500 14px', '600 16px', '700 22px'].map((font) => `${font} "Barlow Condensed"`);

/** A drawing waits at most this long for its face, ms. */
const patience = 1500;

/** Asks for the weights that drawings use. Resolves when they are there, or have kept a drawing waiting too long. */
export const facesReady = async (): Promise<void> => {
  const loads = Promise.all(faces.map((face) => document.fonts.load(face))).catch(() => undefined);
  await Promise.race([loads, new Promise((done) => setTimeout(done, patience))]);
};
