import type { classDoor as english } from '../en/classDoor';

/** Las entradas y salidas de lo que necesita una clase. */
export const classDoor: typeof english = {
  title: 'Para instructores',
  notice: (label) => `Tarea: ${label}`,
  unnamed: 'sin nombre',
  openFile: 'Abrir un archivo de tarea',
  fixed: (how) => `Su instructor pide: ${how}.`,
  back: 'Volver a la tarea',
  toReport: 'Volver al informe',
  reading: (who) => `${who}, solo para leer`,
  nobody: 'sin clave',
};
