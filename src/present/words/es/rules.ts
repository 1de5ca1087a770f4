import type { rules as enRules } from '../en/rules';

const rule = (name: string, why: string) => ({ name, why });

/** Por qué vale cada regla y qué cuesta. */
export const rules: typeof enRules = {
  O1: rule(
    'Arriostre los muros antes de subir la cumbrera',
    'Un muro sin riostra se mueve mientras usted trabaja. Luego toda altura que midió está mal.',
  ),
  O2: rule(
    'Amarre los muros antes de quitar los puntales',
    'Cada par empuja sus muros hacia afuera. Solo un tirante bajo los sujeta. Los altos no.',
  ),
  O3: rule(
    'Marque las medidas antes de armar',
    'Sin marcas cada cabio cae a ojo, media pulgada aquí y allá. Las hojas no le darán.',
  ),
  O4: rule(
    'Resuelva el largo de la cumbrera antes de subirla',
    'En el suelo es un corte. Arriba es una sierra a brazo estirado.',
  ),
  O5: rule(
    'Puntee, compruebe la altura y luego clave los pares de los extremos',
    'Un par punteado se mueve con dos clavos. Uno clavado cuesta clavos sacados y puntas rajadas.',
  ),
  O6: rule(
    'Trabe el medio antes de armar un lado',
    'Una cumbrera larga se dobla con un solo lado. Luego los pares no caben.',
  ),
  O7: rule(
    'Arriostre a lo largo antes de armar',
    'Un techo a medias cae a lo largo de su cumbrera. Una riostra sujeta la fila.',
  ),
  O8: rule(
    'Tire el hilo antes de clavar los talones',
    'Un talón punteado llega al hilo en segundos. Uno clavado no.',
  ),
  O9: rule(
    'Tire la línea antes de los tirantes altos',
    'A ojo, uno por uno, se van. Una línea de tiza los pone a todos.',
  ),
  O10: rule(
    'Clave talones y tirantes antes de sacar los puntales',
    'Los puntales cargan lo que los clavos aún no. Van al final.',
  ),
  O11: rule(
    'Clave los talones y marque las colas antes de cortar una',
    'Un cabio que aún se mueve se lleva su corte. Sin línea cada cola termina donde dice el ojo.',
  ),
  O12: rule(
    'Fije la cumbrera en todos sus postes antes de apoyar un cabio',
    'La cumbrera es una viga. Si falta un poste o está suelto, baja, y los cabios bajan con ella. Al subirla después, todo se ha movido.',
  ),
  O13: rule(
    'Clave el larguero en cada pie derecho antes de cargarlo',
    'Los punteos de sus extremos aguantan el larguero, no la fila. Con cada cabio ceden, y el plano baja con ellos. Luego hay que apuntalar, subir y comprobar otra vez.',
  ),
  C1: rule(
    'Compruebe los muros',
    'Ancho en tres partes, las dos diagonales, nivel, rectos. Un muro malo se arregla fácil solo mientras nada se apoya en él.',
  ),
  C2: rule(
    'Compruebe altura y centro de la cumbrera',
    'Si los cabios están bien cortados, la cumbrera está bien cuando asientan. Véalo mientras solo está punteada.',
  ),
  C3: rule(
    'Nivele la cumbrera y dé vuelta al nivel',
    'Un nivel puede mentir. Al revés miente al otro lado, y las dos lecturas dicen la verdad.',
  ),
  C4: rule(
    'Enderece la cumbrera al hilo',
    'Una cumbrera larga viene combada. Empuje su medio hasta el hilo antes de trabarla con un par: después la comba se queda.',
  ),
  C5: rule('Lea el plano en el hilo', 'El hilo muestra qué talón está alto o bajo antes que las hojas.'),
  C6: rule('Mida desde el origen', 'Los vanos crecen un poco cada uno. Solo se ve desde el origen.'),
  C7: rule('Dé la vuelta con la lista', 'Véalo antes que el inspector.'),
  T1: rule('Nada queda punteado', 'Un punteo aguanta el día, no el viento de la noche.'),
  T2: rule(
    'Cada unión con sus clavos, riostras puestas',
    'Una unión corta de clavos aguanta hasta que llega su carga.',
  ),
  S1: rule('Nadie debajo de una carga', 'Si cae, no hay tiempo de apartarse.'),
  S2: rule(
    'La máquina suelta solo cuando la cumbrera está sujeta',
    'Pares de los extremos y del medio clavados, puntales fijos, riostras puestas, todos apartados.',
  ),
  S3: rule(
    'Nunca sobre la solera, nunca amarrado a lo no hecho',
    'De la solera se cae la gente. Un cabio punteado cae con usted.',
  ),
  S4: rule(
    'Ningún clavo hacia una mano, nada de disparo por golpe',
    'El clavo pasa la cumbrera. Sepa dónde está la mano de su pareja.',
  ),
};

export const dangers: Record<string, string> = {
  underTheLoad: 'Alto. Hay alguien debajo de la cumbrera colgada.',
  raiseUnderLoad: 'Alto. No empuje a mano bajo una carga. Haga la señal, o ponga antes un puntal ahí.',
  onePointHitch: 'Alto. De un solo punto la cumbrera se voltea. Use dos, o ahórquela.',
  letGoTooSoon: 'Alto. La cumbrera aún no está sujeta y hay alguien cerca.',
  propWithSomeoneUnder: 'Alto. Ese puntal carga la cumbrera y hay alguien debajo.',
  topPlate: 'Alto. Nadie trabaja sobre la solera.',
  tiedToUnbuilt: 'Alto. Eso aún no está hecho. Amárrese a algo completo.',
  handBehind: 'Alto. Su pareja sostiene el cabio justo detrás de ese clavo. Puntee antes su lado.',
  bumpTrigger: 'Alto. Ponga las clavadoras en disparo secuencial antes de clavar.',
};

export const refusals: Record<string, string> = {
  over: 'La obra terminó.',
  alreadyThere: 'Ya está puesto.',
  noRidge: 'No hay cumbrera en qué apoyarlo.',
  noBoard: 'Esa tabla no está en la pila.',
  noSuchPlace: 'No hay tal lugar en este techo.',
  nothingToHoldTo: 'No hay bloque ni cabio contra qué ponerlo.',
  nothingToNailTo: 'No hay nada ahí en qué clavarlo.',
  nothingToNailInto: 'Las caras están muy separadas. El clavo no llega.',
  blockTooLong: 'El bloque no entra. Es largo para su vano.',
  raftersNailed: 'Los cabios de ahí están clavados.',
  raftersOnIt: 'Hay cabios apoyados en ella.',
  nailedThere: 'Está sujeto. Saque antes los clavos.',
  wallBehind: 'El larguero va contra su muro. Sube o baja, no va de lado.',
  ridgeLocked: 'Hay un par clavado en el medio. Ahí la cumbrera no se mueve.',
  ridgeNailed: 'El par del extremo está clavado. La cumbrera no se mueve.',
  notPlacedByHand: 'Eso se pone de otro modo.',
  raftersStand: 'Ya hay cabios puestos, con las colas como están.',
  tailsAreCut: 'Esa cola ya está cortada.',
  moreThanItHas: 'No hay tanta madera que quitar.',
  noSuchPiece: 'No hay tal pieza aquí.',
  cutBoardCannotTurn: 'Ya está cortada. Volteada no le queda a nada.',
  noLine: 'Tire antes una línea en los dos lados, o póngalo a ojo.',
  noNailsThere: 'No hay clavos que sacar.',
  noSuchJoint: 'Ahí aún no hay unión.',
  alreadyNailed: 'Ya está sujeto.',
  oneToThreeTacks: 'Puntee con uno a tres clavos.',
  toolCannotShow: 'Esa herramienta no muestra nada ahí.',
  notAReading: 'Eso no es una lectura de esta herramienta.',
  notLookedAt: 'Antes mírelo o mídalo.',
  notToBeJudged: 'Ahí no hay nada que juzgar.',
  nothingToAgree: 'Ahí no hay nada que acordar.',
  notBuiltThisWayHere: 'Esta obra no se hace así.',
  notASignalCode: 'Acuerde las señales normales.',
  anchorNeedsAPlace: 'Diga a qué va amarrado el anclaje.',
  noPlatform: 'Aún no hay plataforma.',
  noLadder: 'Aún no hay escalera.',
  noSuchWall: 'Ahí no hay muro.',
  beyondReach: 'Es más de lo que da un solo movimiento.',
  noBearing: 'Ahí no tiene apoyo.',
  endsNotThere: 'Una línea necesita un cabio en cada extremo.',
  noFloor: 'Un puntal necesita piso o viguetas debajo.',
  ridgeInTheWay: 'La cumbrera está arriba. Corte el puntal a su medida.',
  wrongHeight: 'A esa altura la cumbrera no se apoya en él.',
  noPosts: 'Antes deben estar dos puntales.',
  postsMissing: 'Se caería. Ponga antes un poste a cada lado de su medio.',
  notHooked: 'No cuelga de la máquina.',
  tooHeavyForTwo: 'Dos personas no pueden con eso.',
  noMachine: 'En esta obra no hay máquina, o no cuelga nada de ella.',
  noSignals: 'Acuerde antes las señales con el operador.',
  overTheChart: 'La tabla no permite esa carga a ese alcance.',
  nothingHangs: 'Ahí no cuelga nada.',
  patternDoesNotFit: 'El equipo no puede repetir eso.',
  notASingleAct: 'Eso no es una sola tarea.',
  noUndoInCheckOff: 'En un examen se deshace como en la obra: sacando clavos.',
  nothingToUndo: 'No hay nada que deshacer.',
};

export const cautions: Record<string, string> = {
  fall: 'Las caídas matan. Trabaje desde una plataforma, con baranda o arnés amarrado a algo completo.',
  topPlate: 'Nadie pone cabios parado en la solera.',
  ladder: 'La escalera va amarrada y pasa 3 pies del apoyo.',
  openings: 'Tape todo hueco del piso y márquelo.',
  anchor: 'Nunca se amarre a la cumbrera que se monta, a la carga ni a un cabio punteado.',
  load: 'Nadie se para bajo una carga alta ni en su camino.',
  signals: 'Una persona hace señas. Cualquiera puede decir alto.',
  powerLines: 'Carga y pluma lejos de los cables de luz.',
  nailGun: 'Disparo secuencial. La mano fuera de la línea del clavo.',
  saw: 'Corte en el suelo si puede. Las guardas van puestas.',
  lifting: 'Dos personas, o una máquina, para más de 50 libras.',
  night: 'No deje nada punteado para la noche.',
  localCode:
    'Esto es práctica. El código local, los planos, el fabricante y la gente con licencia van primero.',
};
