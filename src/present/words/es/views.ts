import type { views as en } from '../en/views';

/** Nombres de las vistas y de lo que va junto a ellas. */
export const views: typeof en = {
  sheet: 'Lámina',
  plan: 'Planta',
  zoom: {
    group: 'Mover el dibujo',
    closer: 'Acercar',
    farther: 'Alejar',
    whole: 'Dibujo entero',
    left: 'Ver a la izquierda',
    right: 'Ver a la derecha',
    up: 'Ver más arriba',
    down: 'Ver más abajo',
  },
};
