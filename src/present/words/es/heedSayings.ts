import type { Saying } from './saying';

const bearsOnNothing = 'los {2} de abajo del corte no apoyan en nada.';

/** Cautions and advice: whole sentences. */
export const heedSayings: readonly Saying[] = [
  [
    'The seat bears {0} on the plate; {1} is the least.',
    'El asiento apoya {0} en la solera; lo mínimo es {1}.',
  ],
  [
    'The upper seat bears {0} on the high plate; {1} is the least.',
    'El asiento de arriba apoya {0} en la solera alta; lo mínimo es {1}.',
  ],
  [
    "The upper rafters' seat bears {0} on the purlin; {1} is the least.",
    'El asiento de los cabios de arriba apoya {0} en la correa; lo mínimo es {1}.',
  ],
  [
    'The ridge is {0} deep and the plumb cut of the rake rafters is {1} long: the bottom {2} of the cut bears on nothing.',
    `La cumbrera tiene {0} de alto y el corte a plomo de los cabios de borde mide {1}: ${bearsOnNothing}`,
  ],
  [
    'The ledger is {0} deep and the plumb cut of the rake rafters is {1} long: the bottom {2} of the cut bears on nothing.',
    `El larguero tiene {0} de alto y el corte a plomo de los cabios de borde mide {1}: ${bearsOnNothing}`,
  ],
  [
    'The ridge is {0} deep and the plumb cut is {1} long: the bottom {2} of the cut bears on nothing.',
    `La cumbrera tiene {0} de alto y el corte a plomo mide {1}: ${bearsOnNothing}`,
  ],
  [
    'The ledger is {0} deep and the plumb cut is {1} long: the bottom {2} of the cut bears on nothing.',
    `El larguero tiene {0} de alto y el corte a plomo mide {1}: ${bearsOnNothing}`,
  ],
  [
    'The header is {0} deep and the plumb cut of the rafters on it is {1} long: the bottom {2} of the cut bears on nothing.',
    `El cabezal tiene {0} de alto y el corte a plomo de los cabios que llegan a él mide {1}: ${bearsOnNothing}`,
  ],
  [
    "The purlin is {0} deep and the lower rafters' cut reaches {1} below the upper ones: the bottom {2} of the cut bears on nothing.",
    `La correa tiene {0} de alto y el corte de los cabios de abajo baja {1} de los de arriba: ${bearsOnNothing}`,
  ],
  [
    'The header is {0} deep and what is cut to it needs {1}.',
    'El cabezal tiene {0} de alto y lo que llega a él pide {1}.',
  ],
  [
    'The header is {0} deep and the rafters cut to it need {1}.',
    'El cabezal tiene {0} de alto y los cabios que llegan a él piden {1}.',
  ],
  [
    'The birdsmouth is {0} deep; the most at a bearing is a quarter of the depth, {1}. A seat of {2} keeps to it.',
    'La boca de pájaro tiene {0} de hondo; lo máximo en un apoyo es un cuarto del alto, {1}. Un asiento de {2} lo cumple.',
  ],
  [
    'The upper birdsmouth is {0} deep; the most at a bearing is a quarter of the depth, {1}. A seat of {2} keeps to it.',
    'La boca de pájaro de arriba tiene {0} de hondo; lo máximo en un apoyo es un cuarto del alto, {1}. Un asiento de {2} lo cumple.',
  ],
  [
    '{0} of wood is left over the birdsmouth to carry the overhang; {1} is the least.',
    'Sobre la boca de pájaro quedan {0} de madera para llevar el alero; lo mínimo es {1}.',
  ],
  [
    '{0} of wood is left over the upper birdsmouth to carry the high overhang; {1} is the least.',
    'Sobre la boca de pájaro de arriba quedan {0} de madera para llevar el alero alto; lo mínimo es {1}.',
  ],
  [
    '{0} of wood is left over the seat; {1} is the least.',
    'Sobre el asiento quedan {0} de madera; lo mínimo es {1}.',
  ],
  [
    'The upper third leaves {0} under the ridge board, and a collar needs {1}: use ridge straps.',
    'El tercio de arriba deja {0} bajo la cumbrera y un tirante alto pide {1}: use flejes de cumbrera.',
  ],
  [
    'Behind the blocks a joist has {0} of the plate; {1} is the least.',
    'Detrás de los bloques a un tirante le quedan {0} de solera; lo mínimo es {1}.',
  ],
  ['The collars are {0} apart; {1} is the most.', 'Los tirantes altos están a {0}; lo máximo es {1}.'],
  [
    'The ties are {0} apart; {1} is the most, and newer codes may ask for less.',
    'Los tirantes están a {0}; lo máximo es {1}, y los códigos nuevos pueden pedir menos.',
  ],
  [
    'The ties sit {0} above the plate. Above the lower third, {1}, the ridge has to be a beam.',
    'Los tirantes están {0} sobre la solera. Más arriba del tercio bajo, {1}, la cumbrera tiene que ser una viga.',
  ],
  [
    'Nothing ties the walls together: with a ridge board they need joists or rafter ties, or the ridge has to be a beam.',
    'Nada amarra los muros: con tabla cumbrera piden viguetas o tirantes, o la cumbrera tiene que ser una viga.',
  ],
  [
    'The slope is {0} in {1}. Under {2} in {3} the ridge has to carry as a beam, on posts, not as a board.',
    'La pendiente es {0} en {1}. Con menos de {2} en {3} la cumbrera tiene que cargar como viga, sobre postes, no como tabla.',
  ],
  [
    'The slope is {0} in {1}. The limit of {2} in {3} is for ridges, hips and valleys, which carry as beams below it; a shed has none and may be flatter. Its ledger and what fastens it carry half of the roof at any slope. Mind what roofing the slope takes.',
    'La pendiente es {0} en {1}. El límite de {2} en {3} es para cumbreras, limatesas y limahoyas, que por debajo cargan como vigas; un techo a un agua no las tiene y puede ser más plana. Su larguero y lo que lo sujeta cargan medio techo con cualquier pendiente. Vea qué cubierta admite la pendiente.',
  ],
  [
    'The slope is {0} in {1}. The limit of {2} in {3} is for ridges, hips and valleys, which carry as beams below it; a shed has none and may be flatter. Its high wall carries half of the roof at any slope. Mind what roofing the slope takes.',
    'La pendiente es {0} en {1}. El límite de {2} en {3} es para cumbreras, limatesas y limahoyas, que por debajo cargan como vigas; un techo a un agua no las tiene y puede ser más plana. Su muro alto carga medio techo con cualquier pendiente. Vea qué cubierta admite la pendiente.',
  ],
  [
    'The hip is {0} deep and the jacks are cut {1} long; it has to be as deep as their cut.',
    'La limatesa tiene {0} de alto y el corte de los cabios cortos mide {1}; tiene que ser tan alta como ese corte.',
  ],
  [
    'The valley is {0} deep and the jacks are cut {1} long; it has to be as deep as their cut.',
    'La limahoya tiene {0} de alto y el corte de los cabios cortos mide {1}; tiene que ser tan alta como ese corte.',
  ],
  [
    "At the height of the other rafters the hip's seat is {0}; {1} is the least. A deeper hip reaches the plate.",
    'A la altura de los demás cabios el asiento de la limatesa es de {0}; lo mínimo es {1}. Una limatesa más alta llega a la solera.',
  ],
  [
    "At the height of the other rafters the valley's seat is {0}; {1} is the least. A deeper valley reaches the plate.",
    'A la altura de los demás cabios el asiento de la limahoya es de {0}; lo mínimo es {1}. Una limahoya más alta llega a la solera.',
  ],
  [
    'The tail lines of both sides pass the hip {0} apart, measured along it: their fascias do not meet there at one height. With unequal slopes that takes unequal overhangs.',
    'Las líneas de colas de los dos lados cruzan la limatesa a {0} una de otra, medido a lo largo: sus fascias no se encuentran ahí a una altura. Con pendientes desiguales hacen falta aleros desiguales.',
  ],
  [
    'The tail lines of both sides pass the valley {0} apart, measured along it: their fascias do not meet there at one height. With unequal slopes that takes unequal overhangs.',
    'Las líneas de colas de los dos lados cruzan la limahoya a {0} una de otra, medido a lo largo: sus fascias no se encuentran ahí a una altura. Con pendientes desiguales hacen falta aleros desiguales.',
  ],
  ['The ridge is {0} thick; {1} is the least.', 'La cumbrera tiene {0} de grueso; lo mínimo es {1}.'],
  [
    'The tails reach out {0}; past {1} they need a design.',
    'Las colas salen {0}; más allá de {1} piden un diseño.',
  ],
  [
    'The upper ends reach out {0}; past {1} they need a design.',
    'Las puntas de arriba salen {0}; más allá de {1} piden un diseño.',
  ],
  [
    'What stands rises {0} in {1}, not {2} in {3}: {4} more by the ridge. The new rafters are figured to what stands. Cut to {5} in {6} their plumb cuts would stay {7} open at the top.',
    'Lo que está hecho sube {0} en {1}, no {2} en {3}: {4} más en la cumbrera. Los cabios nuevos se calculan según lo hecho. Cortados a {5} en {6}, sus cortes a plomo quedarían abiertos {7} arriba.',
  ],
  [
    'What stands rises {0} in {1}, not {2} in {3}: {4} less by the ridge. The new rafters are figured to what stands. Cut to {5} in {6} their plumb cuts would stay {7} open at the bottom.',
    'Lo que está hecho sube {0} en {1}, no {2} en {3}: {4} menos en la cumbrera. Los cabios nuevos se calculan según lo hecho. Cortados a {5} en {6}, sus cortes a plomo quedarían abiertos {7} abajo.',
  ],
  [
    "The standing rafters are {0} deep. With the top edges in one plane the new undersides are {1} lower, plumb: at the ridge, at the plates' seats and at any ceiling.",
    'Los cabios ya puestos tienen {0} de alto. Con los cantos de arriba en un plano, los de abajo nuevos quedan {1} más bajos, a plomo: en la cumbrera, en los asientos y en cualquier cielo raso.',
  ],
  [
    "The standing rafters are {0} deep. With the top edges in one plane the new undersides are {1} higher, plumb: at the ridge, at the plates' seats and at any ceiling.",
    'Los cabios ya puestos tienen {0} de alto. Con los cantos de arriba en un plano, los de abajo nuevos quedan {1} más altos, a plomo: en la cumbrera, en los asientos y en cualquier cielo raso.',
  ],
  [
    'The dormer cuts {0} main rafters short. Their partners on the other side push on the ridge alone: ties, floor and ridge there need a design, code and plans first.',
    'La buhardilla corta {0} cabios principales. Sus parejas del otro lado empujan solas la cumbrera: los tirantes, el piso y la cumbrera ahí piden un diseño; primero el código y los planos.',
  ],
  [
    'The dormer cuts {0} main rafter short. Its partner on the other side pushes on the ridge alone: ties, floor and ridge there need a design, code and plans first.',
    'La buhardilla corta {0} cabio principal. Su pareja del otro lado empuja sola la cumbrera: los tirantes, el piso y la cumbrera ahí piden un diseño; primero el código y los planos.',
  ],
  [
    'The headers are {0} long and take {1} rafters to the trimmers. Past {2} header, trimmers and hangers need a design: code and plans first.',
    'Los cabezales miden {0} y llevan {1} cabios a los cabios dobles. Más allá de {2} el cabezal, los dobles y los estribos piden un diseño: primero el código y los planos.',
  ],
  [
    'The dormer leaves {0} main rafter between it and the end of the roof, beside its trimmers; two are common practice.',
    'Entre la buhardilla y el extremo del techo queda {0} cabio principal, junto a los dobles; lo usual son dos.',
  ],
  [
    'The dormer leaves {0} main rafters between it and the end of the roof, beside its trimmers; two are common practice.',
    'Entre la buhardilla y el extremo del techo quedan {0} cabios principales, junto a los dobles; lo usual son dos.',
  ],
  [
    '{0} of the notches in a rafter lie in the middle third of its run, where none may be unless it stands on studs.',
    '{0} de las muescas de un cabio caen en el tercio medio de su tramo, donde no puede haber ninguna si no está sobre pies derechos.',
  ],
  [
    '{0} of the notches in a rafter lie in the middle third of its run, where none may be.',
    '{0} de las muescas de un cabio caen en el tercio medio de su tramo, donde no puede haber ninguna.',
  ],
  [
    'The notches for lookouts are {0} deep; away from its ends a rafter may be notched a sixth of its depth, {1}.',
    'Las muescas para los voladizos tienen {0} de hondo; lejos de sus puntas un cabio admite un sexto de su alto, {1}.',
  ],
  [
    "A notch for a lookout leaves {0} of the end rafter's tail; {1} is the least.",
    'Una muesca para un voladizo deja {0} de la cola del cabio de extremo; lo mínimo es {1}.',
  ],
  [
    'The rake reaches out {0} and its lookouts run back {1}. Common practice, no source: they run back at least as far as they reach out.',
    'El borde sale {0} y sus voladizos entran {1}. Práctica común, sin fuente: entran al menos tanto como salen.',
  ],
  [
    'The lookouts are {0} thick and the rake rafter is {1} deep: their ends show under it.',
    'Los voladizos tienen {0} de grueso y el cabio de borde {1} de alto: sus puntas se ven por debajo.',
  ],
  [
    'No lookout falls on a rafter {0} long: the rake rafter hangs on its ends alone.',
    'Ningún voladizo cae en un cabio de {0}: el cabio de borde cuelga solo de sus puntas.',
  ],
  [
    'Nothing ties the purlins to each other: they need braced walls under them, or ties from break to break.',
    'Nada amarra las correas entre sí: piden muros arriostrados debajo, o tirantes de quiebre a quiebre.',
  ],
  [
    'Only the gussets hold the break: without ties from break to break their size and nails need a design.',
    'Solo las cartelas sostienen el quiebre: sin tirantes de quiebre a quiebre, su tamaño y sus clavos piden un diseño.',
  ],
  [
    'The small gable is {0} high over its header, less than the ridge is deep: nothing is left of it to close or to vent.',
    'El hastial pequeño mide {0} sobre su cabezal, menos que el alto de la cumbrera: no queda nada que cerrar ni ventilar.',
  ],
  [
    'The rafters span {0} on the level. The tables stop at {1} for this wood, spacing and load.',
    'Los cabios salvan {0} a nivel. Las tablas llegan a {1} con esta madera, separación y carga.',
  ],
  [
    'The ties are {0} up from the plate. That leaves {1} of the span in the tables, and the rafters span {2}.',
    'Los tirantes están {0} sobre la solera. Eso deja {1} del claro de las tablas, y los cabios salvan {2}.',
  ],
  [
    'Under full load each tie holds about {0} lb. The nails at the heel have to hold that: take their number from the plans.',
    'Con toda la carga cada tirante sostiene unas {0} lb. Los clavos del talón tienen que sostenerlas: tome su número de los planos.',
  ],
  [
    'The rafters stand {0} over the plate. Over {1}, blocks on a braced wall are not enough: it needs a brace of its own.',
    'Los cabios están {0} sobre la solera. Con más de {1}, los bloques sobre un muro arriostrado no bastan: pide una riostra propia.',
  ],
  [
    "The dormer's slope is {0} in {1}. Under {2} in {3} few roofings keep water out: look up the least slope of the one chosen.",
    'La pendiente de la buhardilla es {0} en {1}. Con menos de {2} en {3} pocas cubiertas paran el agua: vea la pendiente mínima de la que elija.',
  ],
  [
    'The ridge of section {0} is to carry as a beam and bears at one place: it needs two, posts or the walls of higher sections.',
    'La cumbrera de la parte {0} ha de cargar como viga y apoya en un lugar: pide dos, postes o los muros de partes más altas.',
  ],
  [
    'The ridge of section {0} is to carry as a beam and bears at no place: it needs two, posts or the walls of higher sections.',
    'La cumbrera de la parte {0} ha de cargar como viga y no apoya en ninguno: pide dos, postes o los muros de partes más altas.',
  ],
  [
    'The ridge bears {0} in its pocket; {1} is the least.',
    'La cumbrera apoya {0} en su hueco; lo mínimo es {1}.',
  ],
  [
    'The ridge bears {0} on the wall under it; {1} is the least.',
    'La cumbrera apoya {0} en el muro de abajo; lo mínimo es {1}.',
  ],
  [
    "The pocket is at the height of the higher wall's top plates, {0} down from their top to its bottom: it cuts them. Strap them across it, and carry what stands over it on a header.",
    'El hueco está a la altura de las soleras altas del muro, {0} desde arriba hasta su fondo: las corta. Ponga un fleje que lo cruce y lleve lo de arriba con un cabezal.',
  ],
  [
    "The ridge comes {0} into the wall at the height of the higher part's first collar, which lies beside the end rafters: set that back to clear it.",
    'La cumbrera entra {0} en el muro a la altura del primer tirante alto de la parte alta, que va junto a los cabios de extremo: póngalo más atrás.',
  ],
  [
    "The ridge comes {0} into the wall at the height of the higher part's first tie, which lies beside the end rafters: set that back to clear it.",
    'La cumbrera entra {0} en el muro a la altura del primer tirante de la parte alta, que va junto a los cabios de extremo: póngalo más atrás.',
  ],
  [
    'The higher ridge runs out over the lower roof with {0} between them; under {1} nobody can sheathe and flash the lower roof there.',
    'La cumbrera alta sale sobre el techo bajo con {0} entre los dos; con menos de {1} nadie puede forrar ni tapar ahí el techo bajo.',
  ],
];
