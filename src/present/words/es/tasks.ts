import type { TaskCode } from '../../../core/order/crew/task';

/** Las líneas de la lista del equipo. */
export const tasks: Readonly<Record<TaskCode, string>> = {
  agree: 'Acordar cómo se hace',
  braceWalls: 'Arriostrar los muros',
  proveWalls: 'Comprobar los muros',
  lookOver: 'Mirar cada tabla',
  settleRidge: 'Resolver el largo de la cumbrera',
  tieWalls: 'Amarrar los muros',
  layOut: 'Marcar soleras y cumbrera',
  makeReady: 'Listos para subir',
  setPosts: 'Poner los puntales',
  landRidge: 'Subir la cumbrera',
  proveEnds: 'Extremos punteados, altura probada',
  nailEnds: 'Clavar los pares de los extremos',
  fixLedger: 'Clavar el larguero en cada pie derecho',
  braceRidge: 'Arriostrar la cumbrera en dos sentidos',
  lockMiddle: 'Trabar un par del medio',
  letGo: 'Aflojar, mirar, soltar',
  string: 'Tirar el hilo',
  stack: 'Armar el lado',
  heels: 'Leer el hilo, clavar el lado',
  chalk: 'Tirar la línea de los tirantes',
  upper: 'Tirantes altos o flejes',
  tails: 'Marcar las colas y cortarlas',
  propsOut: 'Sacar los puntales',
  handOver: 'Lista de pendientes, entregar',
};
