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
  loads: {
    show: 'Camino de la carga',
    says: 'Por el peso de la madera sola, como está ahora, en libras. Sin nieve, viento ni gente.',
    none: 'Nada está clavado aún: nada carga.',
    arrows: 'La flecha va hacia donde la pieza empuja o jala. Más ancha es más carga.',
    kind: { push: 'empuja', pull: 'jala', down: 'baja', out: 'abre' },
    way: { down: 'hacia abajo', up: 'hacia arriba', out: 'hacia afuera', in: 'hacia adentro' },
    key: (pounds) => `así de ancha: ${pounds} lb`,
    rafter: (name, top, foot) => `${name}: ${top} en la cumbrera, ${foot} en el muro.`,
    heel: (down, out) => `Sobre el muro: ${down}, ${out}.`,
    pulls: (name, pounds) => `${name}: jala ${pounds}.`,
    pushes: (name, pounds) => `${name}: empuja ${pounds}.`,
    carries: (name, pounds) => `${name}: carga ${pounds}.`,
    held: (pounds) => `Lo que cargan las manos o la eslinga: ${pounds}.`,
    whole: (all, walls) => `Toda la armazón pesa ${all}. Los muros cargan ${walls}.`,
  },
  strip: {
    show: 'Ampliado',
    title: (times) => `×${times}, fuera de escala`,
    none: 'La cumbrera no está arriba aún.',
    intended: 'A rayas: lo que se busca. Nada se coloca por esta tira.',
    kind: {
      height: 'Alto de cumbrera',
      straight: 'Cumbrera desde arriba',
      'gap.street': 'Hilo, lado calle',
      'gap.yard': 'Hilo, lado patio',
    },
    way: {
      height: { plus: 'de más', minus: 'de menos' },
      straight: { plus: 'hacia el patio', minus: 'hacia la calle' },
      'gap.street': { plus: 'cerca del hilo', minus: 'lejos del hilo' },
      'gap.yard': { plus: 'cerca del hilo', minus: 'lejos del hilo' },
    },
    on: (name) => `${name}: en su línea.`,
    off: (name, far, station) => `${name}: lo más, en ${station}: ${far}.`,
  },
  hold: { hoist: 'Mantén para subir', lower: 'Mantén para bajar', start: 'Empezar', stop: 'Parar' },
};
