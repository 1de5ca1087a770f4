import type { states as en } from '../en/states';

/** Lo que se dice cuando algo no está como debe: cada frase dice qué hacer. */
export const states: typeof en = {
  unkept: 'Este aparato no guarda la obra. Guárdela en un archivo antes de salir.',
  unkeptAll: 'Este aparato no va a guardar sus obras. Guarde cada una en un archivo antes de salir.',
  save: 'Guardar archivo',
  link: 'Este enlace nombra una obra que no está aquí. Elija una de la lista.',
  levels: (n) =>
    n === 1
      ? 'Una obra no se puede leer. Las otras sirven.'
      : `${n} obras no se pueden leer. Las otras sirven.`,
  mend: 'Arregle el archivo, o pídalo otra vez a quien se lo dio.',
  line: (n) => `renglón ${n}`,
  more: (n) => (n === 1 ? 'y una cosa más' : `y ${n} cosas más`),
  elsewhere: 'Esta obra está abierta en otra pestaña. Siga allá, o cierre esa pestaña y presione otra vez.',
  stopped: {
    rules: (job) =>
      `Su última vez en «${job}» se hizo con reglas viejas. Está guardada, pero no puede seguir. Empiece de nuevo.`,
    changed: (job) =>
      `La obra «${job}» cambió desde su última vez. Está guardada, pero no puede seguir. Empiece de nuevo.`,
    gone: (job) =>
      `La obra de su última vez, «${job}», ya no está aquí. Lo hecho está guardado. Elija una obra de la lista.`,
    unreadable: (job) => `Su última vez en «${job}» no se puede leer. Empiece de nuevo.`,
  },
};
