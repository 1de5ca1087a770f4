import type { SoundName } from '../present/sounds';

/** Where each sound lies in assets/sounds/sprite.mp3: from, and how long, milliseconds. Made by `npm run sounds`. */
export const spriteTable: Readonly<Record<SoundName, readonly [from: number, long: number]>> = {
  hammer: [100, 663],
  nailer: [863, 356],
  creak: [1319, 926],
  saw: [2345, 1419],
  plane: [3864, 550],
  chalk: [4514, 289],
  string: [4903, 1250],
  tape: [6253, 1194],
  tick: [7547, 87],
  lay: [7734, 125],
  pencil: [7959, 400],
  rafter: [8459, 455],
  block: [9014, 269],
  ridge: [9382, 583],
  brace: [10065, 813],
  knock: [10978, 706],
  ladder: [11784, 549],
  steps: [12433, 577],
  clip: [13111, 175],
  chain: [13386, 721],
  lift: [14207, 1500],
  idle: [15807, 1150],
  slack: [17057, 818],
  no: [17974, 124],
  stop: [18198, 423],
  fall: [18721, 2159],
};

/** SHA-256 of the sounds before they are encoded, sixteen bits a sample: tells whether the file is of this make. */
export const madeFrom = 'ec80c1ea3b69deb538efc71493a004f3d47fc8b7dccfef8fcb6b2aa1839b3dd6';
