import { rgb, type Rgb, type Stops } from './color';

/** The look's colors, by day and by night. Each material has one job: pencil is what is, chalk is what is meant. */
export type Theme = 'day' | 'night';

export type Tone =
  | 'lumber'
  | 'panel'
  | 'sheath'
  | 'steel'
  | 'alu'
  | 'vest'
  | 'band'
  | 'pants'
  | 'shirt'
  | 'skin'
  | 'skin2'
  | 'glove'
  | 'boot'
  | 'belt'
  | 'hat'
  | 'hair'
  | 'glass';

export type Palette = {
  readonly deck: Rgb;
  readonly strands: readonly Rgb[];
  readonly strandEdge: Rgb;
  readonly paper: Rgb;
  readonly ink: Rgb;
  readonly ink2: Rgb;
  readonly chalk: Rgb;
  readonly casing: Rgb;
  readonly pencil: Rgb;
  readonly edge: Rgb;
  /** Silhouette and inner edge strength. */
  readonly edgeAlpha: { readonly outer: number; readonly inner: number };
  readonly grain: Rgb;
  readonly grainAmount: { readonly overview: number; readonly flat: number; readonly close: number };
  readonly sling: Rgb;
  readonly slingEdge: Rgb;
  readonly safety: Rgb;
  readonly hat: Rgb;
  readonly steelEdge: Rgb;
  readonly seam: { readonly dark: string; readonly light: string };
  readonly ambient: number;
  readonly sunStrength: number;
  readonly tones: Readonly<Record<Tone, Stops>>;
};

const day: Palette = {
  deck: rgb('#d9cdb3'),
  strands: ['#dfd4ba', '#d3c5a8', '#e4dac3', '#cfc1a3', '#dcd0b6', '#d7caae'].map(rgb),
  strandEdge: rgb('#bfb08e'),
  paper: rgb('#fbf7ec'),
  ink: rgb('#26221d'),
  ink2: rgb('#473f34'),
  chalk: rgb('#1b4683'),
  casing: rgb('#fbf7ec'),
  pencil: rgb('#3a3026'),
  edge: rgb('#34271b'),
  edgeAlpha: { outer: 0.86, inner: 0.5 },
  grain: rgb('#603414'),
  grainAmount: { overview: 0.22, flat: 0.14, close: 0.42 },
  sling: rgb('#e8a010'),
  slingEdge: rgb('#543406'),
  safety: rgb('#f36f1c'),
  hat: rgb('#ffcd28'),
  steelEdge: rgb('#26303a'),
  seam: { dark: 'rgba(92,76,50,.62)', light: 'rgba(255,250,236,.65)' },
  ambient: 0.17,
  sunStrength: 0.66,
  tones: {
    lumber: [
      [0, rgb('#704e30')],
      [0.25, rgb('#966d45')],
      [0.5, rgb('#c19563')],
      [0.75, rgb('#e4be89')],
      [1, rgb('#fae6bc')],
    ],
    panel: [
      [0, rgb('#746046')],
      [0.4, rgb('#a48f6e')],
      [0.7, rgb('#c7b28f')],
      [1, rgb('#e2d0af')],
    ],
    sheath: [
      [0, rgb('#846c4e')],
      [0.4, rgb('#ac9370')],
      [0.7, rgb('#ccb591')],
      [1, rgb('#e2d0af')],
    ],
    steel: [
      [0, rgb('#3e4c5a')],
      [0.5, rgb('#788c9e')],
      [1, rgb('#dee8f0')],
    ],
    alu: [
      [0, rgb('#54626e')],
      [0.5, rgb('#8e9eaa')],
      [1, rgb('#e2eaee')],
    ],
    vest: [
      [0, rgb('#9e3a0a')],
      [0.45, rgb('#d6560e')],
      [0.8, rgb('#f3701a')],
      [1, rgb('#ff923e')],
    ],
    band: [
      [0, rgb('#96988c')],
      [0.5, rgb('#ced0be')],
      [1, rgb('#fafaec')],
    ],
    pants: [
      [0, rgb('#303842')],
      [0.5, rgb('#4e5966')],
      [1, rgb('#7a8692')],
    ],
    shirt: [
      [0, rgb('#5c6264')],
      [0.5, rgb('#8e9494')],
      [1, rgb('#c4c8c4')],
    ],
    skin: [
      [0, rgb('#68422c')],
      [0.5, rgb('#9e6a4a')],
      [1, rgb('#ce9a74')],
    ],
    skin2: [
      [0, rgb('#462c1e')],
      [0.5, rgb('#704a34')],
      [1, rgb('#a07254')],
    ],
    glove: [
      [0, rgb('#5c4a2c')],
      [0.5, rgb('#967c4e')],
      [1, rgb('#ccb27e')],
    ],
    boot: [
      [0, rgb('#2c2018')],
      [0.5, rgb('#523c2c')],
      [1, rgb('#80644c')],
    ],
    belt: [
      [0, rgb('#3e2818')],
      [0.5, rgb('#68462a')],
      [1, rgb('#966c46')],
    ],
    hat: [
      [0, rgb('#b07804')],
      [0.5, rgb('#ecac0a')],
      [0.85, rgb('#ffcd28')],
      [1, rgb('#ffe88c')],
    ],
    hair: [
      [0, rgb('#241c18')],
      [1, rgb('#544236')],
    ],
    glass: [
      [0, rgb('#282e34')],
      [1, rgb('#788896')],
    ],
  },
};

const night: Palette = {
  deck: rgb('#221f1b'),
  strands: ['#26221d', '#1f1c18', '#28241f', '#201d19', '#2a2621'].map(rgb),
  strandEdge: rgb('#1a1714'),
  paper: rgb('#353029'),
  ink: rgb('#f1e9d9'),
  ink2: rgb('#c3b8a4'),
  chalk: rgb('#9cc0f2'),
  casing: rgb('#12100e'),
  pencil: rgb('#e2d6be'),
  edge: rgb('#e8dcc6'),
  edgeAlpha: { outer: 0.69, inner: 0.4 },
  grain: rgb('#0a0602'),
  grainAmount: { overview: 0.34, flat: 0.3, close: 0.42 },
  sling: rgb('#f6b830'),
  slingEdge: rgb('#281a04'),
  safety: rgb('#f36f1c'),
  hat: rgb('#ffc82c'),
  steelEdge: rgb('#bed0d8'),
  seam: { dark: 'rgba(0,0,0,.75)', light: 'rgba(255,240,214,.10)' },
  ambient: 0.1,
  sunStrength: 0.7,
  tones: {
    lumber: [
      [0, rgb('#261c13')],
      [0.25, rgb('#4a3623')],
      [0.5, rgb('#7c5c3b')],
      [0.75, rgb('#b88f5f')],
      [1, rgb('#f4ce96')],
    ],
    panel: [
      [0, rgb('#1e1b17')],
      [0.4, rgb('#363028')],
      [0.7, rgb('#544b3d')],
      [1, rgb('#786b56')],
    ],
    sheath: [
      [0, rgb('#1a1713')],
      [0.4, rgb('#2e2821')],
      [0.7, rgb('#4c4336')],
      [1, rgb('#786b56')],
    ],
    steel: [
      [0, rgb('#2e3a46')],
      [0.5, rgb('#687c8e')],
      [1, rgb('#d6e2ec')],
    ],
    alu: [
      [0, rgb('#2c363e')],
      [0.5, rgb('#62707c')],
      [1, rgb('#ccd6dc')],
    ],
    vest: [
      [0, rgb('#6c2608')],
      [0.45, rgb('#be4a0e')],
      [0.8, rgb('#f67620')],
      [1, rgb('#ffa054')],
    ],
    band: [
      [0, rgb('#6e7068')],
      [0.5, rgb('#ced0be')],
      [1, rgb('#fffff0')],
    ],
    pants: [
      [0, rgb('#1a1f25')],
      [0.5, rgb('#343c46')],
      [1, rgb('#626c78')],
    ],
    shirt: [
      [0, rgb('#34383a')],
      [0.5, rgb('#626668')],
      [1, rgb('#a4a8a6')],
    ],
    skin: [
      [0, rgb('#422a1e')],
      [0.5, rgb('#7c543c')],
      [1, rgb('#be8e6c')],
    ],
    skin2: [
      [0, rgb('#302017')],
      [0.5, rgb('#583c2b')],
      [1, rgb('#8e684e')],
    ],
    glove: [
      [0, rgb('#3a2e1e')],
      [0.5, rgb('#705c3c')],
      [1, rgb('#b29a6e')],
    ],
    boot: [
      [0, rgb('#1a140f')],
      [0.5, rgb('#382a1f')],
      [1, rgb('#644e3c')],
    ],
    belt: [
      [0, rgb('#281b11')],
      [0.5, rgb('#4c3420')],
      [1, rgb('#7c5a3c')],
    ],
    hat: [
      [0, rgb('#785004')],
      [0.5, rgb('#ce920a')],
      [0.85, rgb('#ffc82c')],
      [1, rgb('#ffe896')],
    ],
    hair: [
      [0, rgb('#14100e')],
      [1, rgb('#40342c')],
    ],
    glass: [
      [0, rgb('#1a1e22')],
      [1, rgb('#64727e')],
    ],
  },
};

export const palettes: Readonly<Record<Theme, Palette>> = { day, night };
