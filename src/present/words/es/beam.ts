import type { beam as en } from '../en/beam';

/** Lo que se llama de otra manera donde la cumbrera es una viga y sus postes se quedan. */
export const beam: typeof en = {
  post: (n) => `Poste ${n}`,
  setPosts: 'Poner los postes que se quedan, a plomo y fijos',
  hang: 'subida a sus postes',
  ridge: (n) => `una viga sobre ${n} postes que se quedan`,
  noTies: 'no hay. La viga sostiene los cabios, y casi no empujan los muros.',
  fromA: (post) => `${post}, centro desde el extremo A`,
  length: 'Postes, de la base a la cumbrera',
  liftedOn: 'Subirla a sus postes',
  lowered: 'Bajarla con la máquina',
  set: 'Ponga el poste en su base',
  posts: 'La cumbrera está arriba, en sus postes.',
  onPosts: 'en sus postes',
  held: 'Pares de los extremos y del medio clavados, postes fijos, riostras puestas, todos apartados.',
  raise: 'Alto. No empuje a mano bajo una carga. Haga la señal, o ponga antes el poste ahí.',
  under: 'Alto. Ese poste carga la cumbrera y hay alguien debajo.',
  inTheWay: 'La cumbrera está arriba. Corte el poste a su medida.',
};
