import * as z from 'zod/mini';
import { roofDefaults, roofLimits, type RoofLength } from './roofLimits';

/** A roof file as people write it: lengths are numbers in the file's units, or texts such as `12' 3-7/16"`. */

export const lengthWanted = `a length such as 24, "5 1/2\\"", "12' 3-7/16\\"" or "305 mm"`;

const length = (path: RoofLength, what: string) => {
  const { min, max } = roofLimits[path];
  return z
    .union([z.number(), z.string()], lengthWanted)
    .check(
      z.describe(`${what} ${min} to ${max} in, as a number in the file's units or a text with its mark.`),
    );
};

const countWanted = 'a whole number, 1 to 100';
const count = (what: string) =>
  z.int(countWanted).check(z.gte(1, countWanted), z.lte(100, countWanted), z.describe(what));

const every = (what: string, usual: number) => z.optional(count(`${what} ${usual} unless said.`));

/** Kinds that can be figured so far. */
export const roofKinds = ['gable', 'hip', 'shed'] as const;

/** A part of the slope: only the two together have a meaning, so any measure will do for both. */
const leg = (what: string) =>
  z.union([z.number(), z.string()], 'a number, usually of inches').check(z.describe(what));

const slope = (what: string) =>
  z.strictObject({ rise: leg(what), run: leg('The level part of the slope, usually 12.') });

const joists = z.strictObject({
  every: every('1 for a joist at every pair of rafters, 2 for every other pair.', roofDefaults.joistsEvery),
  height: z.optional(length('joists.height', 'Lower edge above the plate; 0 for on the plate.')),
});

const collars = z.strictObject({
  every: every('1 for a collar at every pair of rafters, 2 for every other pair.', roofDefaults.collarsEvery),
});

const vents = z.discriminatedUnion(
  'shape',
  [
    z.strictObject({
      shape: z.literal('notch'),
      depth: length('vents.depth', 'Down from the top edge of the block.'),
      leave: length('vents.leave', 'Left at full height at each end of the block.'),
    }),
    z.strictObject({
      shape: z.literal('holes'),
      count: count('Holes in a full block.'),
      diameter: length('vents.diameter', 'Of each hole.'),
    }),
  ],
  '{"shape": "notch", …} or {"shape": "holes", …}',
);

const or = (what: string) => z.describe(what);
const off = <T extends z.ZodMiniType>(schema: T, wanted: string, what: string) =>
  z.optional(z.union([z.literal(false), schema], wanted).check(or(what)));

const section = (path: 'wings.*.ridge' | 'wings.*.valley', what: string) =>
  z.optional(
    z
      .strictObject({
        thickness: length(`${path}.thickness`, 'Actual, dry.'),
        depth: length(`${path}.depth`, 'Actual, dry.'),
      })
      .check(z.describe(what)),
  );

const wing = z.strictObject({
  side: z.enum(['street', 'yard']).check(z.describe('The long wall it stands against.')),
  at: length('wings.*.at', 'Its ridge, from end A of the main roof.'),
  span: length('wings.*.span', 'Level, between the outsides of its plates.'),
  length: length(
    'wings.*.length',
    "Along its plates, from the outside of the main roof's plate to its gable.",
  ),
  slope: z.optional(slope('That of the side it stands against unless said.')),
  overhang: z.optional(length('wings.*.overhang', 'That of the side it stands against unless said.')),
  rakeOverhang: z.optional(
    length('wings.*.rakeOverhang', 'Past its gable. That of the main roof unless said.'),
  ),
  ridge: section('wings.*.ridge', "Of the main ridge's stock unless said."),
  valley: section('wings.*.valley', "Valley rafters. Of the main ridge's stock unless said."),
  framing: z.optional(
    z
      .enum(['longValley', 'suspendedRidge'])
      .check(
        z.describe(
          'How valleys end where its ridge comes in lower than the main one: one of them runs on to the main ridge and the other against it, or both end against its own ridge, which runs on and hangs from the main one. A long valley unless said.',
        ),
      ),
  ),
  longFrom: z.optional(
    z.enum(['A', 'B']).check(z.describe('Which valley is the long one: on the side of end A unless said.')),
  ),
});

const highPlate = z.strictObject({
  width: z.optional(length('highPlate.width', 'That of the low plate unless said.')),
  seat: z.optional(
    length(
      'highPlate.seat',
      'Level cut, from its inner face outward. As much as lies on the low plate unless said.',
    ),
  ),
  overhang: z.optional(
    length(
      'highPlate.overhang',
      "Level, from the reference face of the high wall to the plumb cut of the rafters' upper ends. 0 unless said.",
    ),
  ),
});

const between = z.strictObject({
  clearance: z.optional(
    length('between.clearance', 'Level, left between each wall and the end rafter beside it. 0 unless said.'),
  ),
});

const standing = z.strictObject({
  end: z.enum(['A', 'B']).check(z.describe('The end of the new roof it stands at.')),
  heightAbovePlate: length(
    'standing.heightAbovePlate',
    'Plumb, at the outside of its plate: from the plate to the top edge of its rafters.',
  ),
  ridgeTop: z.optional(
    length(
      'standing.ridgeTop',
      'Top of its ridge above the plate, flush with its rafters. Where it is given, the new roof follows the slope that stands.',
    ),
  ),
  ridgeThickness: z.optional(
    length('standing.ridgeThickness', 'Of its ridge. That of the new one unless said.'),
  ),
  lastRafter: length(
    'standing.lastRafter',
    'Centre of its last rafter, behind the joint line. The first new rafter is one spacing from there.',
  ),
  rafterDepth: z.optional(
    length('standing.rafterDepth', 'Of its rafters. That of the new ones unless said.'),
  ),
});

const manyWings = '1 to 20 wings';

export const roofSchema = z.strictObject({
  format: z.literal('tack-and-true/roof@1').check(z.describe('Says what this file is.')),
  kind: z.enum(roofKinds).check(z.describe('What people call this roof.')),
  units: z.optional(
    z.enum(['in', 'mm']).check(z.describe('What numbers without a mark are in. Inches unless said.')),
  ),
  slope: slope('How far the roof climbs over its run: the 6 of 6 in 12. 1 to 36 in 12.'),
  span: length(
    'span',
    'Level, from the outside of one plate to the outside of the other; of a shed roof on a ledger, to the face behind that.',
  ),
  length: length('length', 'Along the plates, from end to end.'),
  overhang: length('overhang', 'Level, from the reference face to the plumb cut of the tails.'),
  rakeOverhang: z.optional(length('rakeOverhang', 'How far the ridge runs past each gable. 0 unless said.')),
  spacing: length('spacing', 'Rafter centre to rafter centre.'),
  rafter: z.strictObject({
    thickness: length('rafter.thickness', 'Actual, dry.'),
    depth: length('rafter.depth', 'Actual, dry, square to the edge.'),
  }),
  ridge: z.optional(
    z
      .strictObject({
        thickness: length('ridge.thickness', 'Actual, dry.'),
        depth: length(
          'ridge.depth',
          'Actual, dry. At least the plumb cut of the rafters, or a caution is given.',
        ),
      })
      .check(z.describe('Of every roof but a shed, which has none.')),
  ),
  ledger: z.optional(
    z
      .strictObject({
        thickness: length('ledger.thickness', 'Actual, dry.'),
        depth: length('ledger.depth', 'Actual, dry.'),
      })
      .check(z.describe('On the high wall of a shed roof.')),
  ),
  highPlate: z.optional(
    highPlate.check(
      z.describe(
        'Top plate of a second, higher wall that a shed roof bears on, in place of a ledger. Rafters have a second birdsmouth there, its heel cut at the inner face of this plate: their run is the span less its width.',
      ),
    ),
  ),
  between: z.optional(
    between.check(
      z.describe(
        'Side walls that rise past a shed roof at both ends; then its length is from wall to wall. {} for end rafters tight to them.',
      ),
    ),
  ),
  standing: z.optional(
    standing.check(
      z.describe(
        'A gable roof that stands at one end, measured: the new top edges lie in its planes, the layout goes on from its last rafter, and there is no gable or rake overhang at the joint line. Seat, datum and yard are left out.',
      ),
    ),
  ),
  yard: z.optional(
    z
      .strictObject({
        slope: z.optional(slope('Of its own. That of the street side unless said.')),
        plateHeight: z.optional(
          length('yard.plateHeight', 'Of its plate over the street plate. 0 unless said.'),
        ),
        overhang: z.optional(length('yard.overhang', 'That of the street side unless said.')),
        seat: z.optional(length('yard.seat', 'That of the street side unless said.')),
      })
      .check(z.describe('What the yard side of a gable has of its own.')),
  ),
  gableStuds: z.optional(
    z
      .strictObject({
        spacing: z.optional(
          length(
            'gableStuds.spacing',
            'From the centre line of the ridge out to both sides. 16 unless said.',
          ),
        ),
        thickness: z.optional(length('gableStuds.thickness', '1 1/2 unless said.')),
      })
      .check(z.describe('Studs between the plates and the end rafters. None unless said; {} for the usual.')),
  ),
  posts: z.optional(
    z
      .strictObject({
        at: z
          .array(z.union([z.number(), z.string()], lengthWanted), '1 to 50 places from end A')
          .check(
            z.minLength(1, '1 to 50 places from end A'),
            z.maxLength(50, '1 to 50 places from end A'),
            z.describe('Centres of the posts, from end A.'),
          ),
        below: length('posts.below', 'How far below the top of the plates they stand.'),
      })
      .check(z.describe('Under the ridge of a gable, which then carries as a beam.')),
  ),
  wings: z.optional(
    z
      .array(wing, manyWings)
      .check(
        z.minLength(1, manyWings),
        z.maxLength(20, manyWings),
        z.describe(
          'Gables that stand square to a gable roof and meet it in valleys. Figured, not yet played.',
        ),
      ),
  ),
  plate: z.strictObject({ width: length('plate.width', 'Of the top plate.') }),
  seat: z.optional(
    length(
      'seat',
      'Level cut of the birdsmouth, from the reference face inward. Needed, but beside a standing roof, whose height above the plate gives it.',
    ),
  ),
  reference: z.optional(
    z
      .enum(['plate', 'sheathing'])
      .check(z.describe('Outer face that the heel cut bears on. The plate unless said.')),
  ),
  sheathing: z.optional(
    length('sheathing', 'Thickness of the wall sheathing, used when it is the reference. 1/2 unless said.'),
  ),
  blockAllowance: z.optional(
    length('blockAllowance', 'How much shorter than its bay a block is cut. 1/16 unless said.'),
  ),
  blockStands: z.optional(
    z.enum(['plumb', 'square']).check(z.describe('Plumb unless said, or square to the rafters.')),
  ),
  datum: z.optional(
    z
      .enum(['endA', 'endB', 'centre', 'ridgeEnd'])
      .check(
        z.describe(
          'Where the layout starts. End A unless said; on a hip roof the ends of the ridge, always.',
        ),
      ),
  ),
  endSlope: z.optional(slope('Of the two end planes of a hip roof. That of the long sides unless said.')),
  hip: z.optional(
    z
      .strictObject({
        thickness: length('hip.thickness', 'Actual, dry.'),
        depth: length('hip.depth', 'Actual, dry.'),
      })
      .check(z.describe("Hip rafters. Of the ridge's stock unless said.")),
  ),
  hipTop: z.optional(
    z
      .enum(['betweenCommons', 'againstRidge'])
      .check(
        z.describe(
          'Hips end between the commons at the end of the ridge, or against the ridge with no commons there. Between commons unless said.',
        ),
      ),
  ),
  hipFit: z.optional(
    z
      .enum(['backed', 'dropped'])
      .check(
        z.describe(
          'The top edges of hips are planed to both planes, or hips are set lower. Backed unless said.',
        ),
      ),
  ),
  joists: off(joists, 'false, or {"every", "height"}', 'Ceiling joists or rafter ties; false for none.'),
  collars: off(collars, 'false, or {"every"}', 'Collar ties in the upper third; false for none.'),
  vents: z.optional(vents.check(z.describe('Openings in the blocks. None unless said.'))),
});

export type RoofFile = z.infer<typeof roofSchema>;
