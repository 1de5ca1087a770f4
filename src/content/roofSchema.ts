import * as z from 'zod/mini';
import { roofDefaults } from './roofLimits';
import { dormer, manyDormers } from './dormerSchema';
import { sections } from './roofSchemaRun';
import {
  lengthWanted,
  length,
  every,
  roofKinds,
  slope,
  joists,
  collars,
  lookouts,
  vents,
  off,
  wing,
  gablet,
  manyWings,
  highPlate,
  between,
  standing,
  site,
} from './roofSchemaParts';

/** A roof file as people write it: lengths are numbers in the file's units, or texts such as `12' 3-7/16"`. */

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
  rake: z.optional(
    z
      .strictObject({
        rafter: z.optional(
          z
            .strictObject({
              thickness: length('rake.rafter.thickness', 'Actual, dry.'),
              depth: length('rake.rafter.depth', 'Actual, dry.'),
            })
            .check(z.describe("Stock of the rake rafters. The commons' unless said.")),
        ),
        lookouts: off(
          lookouts,
          'false, or {"spacing", "thickness", "width", "back"}',
          'Laid flat in notches of the end rafters, from the rake rafter back to a common; false for none.',
        ),
      })
      .check(
        z.describe(
          'Rake rafters, their outer faces at the rake overhang, and lookouts that hold them. On a shed the ledger then runs past the gables as far, so the wall behind has to. None unless said; {} for the usual.',
        ),
      ),
  ),
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
        below: length(
          'posts.below',
          'How far below the top of the plates they stand; in a run, of plates without a plateHeight.',
        ),
      })
      .check(z.describe('Under the ridge of a gable, or those of a run, which then carry as beams.')),
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
  dormers: z.optional(
    z
      .array(dormer, manyDormers)
      .check(
        z.minLength(1, manyDormers),
        z.maxLength(20, manyDormers),
        z.describe('Shed and gable dormers in a gable roof. Figured, not yet played.'),
      ),
  ),
  upperSlope: z.optional(
    slope('Of a gambrel: the flatter slope over the break. Its `slope` is the steep one below.'),
  ),
  breakIn: z.optional(
    length('breakIn', 'Of a gambrel: level, from the reference face in to the line where the slopes meet.'),
  ),
  halfCircle: z.optional(
    z
      .literal(true, 'true, or left out')
      .check(
        z.describe(
          'Of a gambrel: break and ridge lie on a half circle over the reference faces, as the lines of its rafters are measured. `upperSlope` and `breakIn` follow from the slope and are left out.',
        ),
      ),
  ),
  breakOn: z.optional(
    z
      .enum(['purlin', 'gussets'])
      .check(
        z.describe(
          'How a gambrel is framed at the break. On a purlin the upper rafters sit with a birdsmouth and both slopes are cut plumb over its outer face; with gussets both are mitered along the line that halves their angle and plywood is nailed over the joint. A purlin unless said.',
        ),
      ),
  ),
  purlin: z.optional(
    z
      .strictObject({
        thickness: length('purlin.thickness', 'Actual, dry.'),
        depth: length(
          'purlin.depth',
          'Actual, dry. At least what the lower rafters reach below the upper ones, or a caution is given.',
        ),
        seat: z.optional(
          length(
            'purlin.seat',
            "Level cut of the upper rafters' birdsmouth. All of its thickness unless said.",
          ),
        ),
      })
      .check(z.describe("Under a gambrel's break. Of the ridge's stock unless said.")),
  ),
  gussets: z.optional(
    z
      .strictObject({
        thickness: z.optional(length('gussets.thickness', 'Of the plywood. 1/2 unless said.')),
        reach: z.optional(
          length('gussets.reach', 'From the break along the top edge of each rafter. 12 unless said.'),
        ),
      })
      .check(z.describe("Over both faces of a gambrel's mitered joints.")),
  ),
  breakTies: off(
    z.strictObject({
      every: every(
        '1 for a tie at every pair of rafters, 2 for every other pair.',
        roofDefaults.breakTiesEvery,
      ),
    }),
    'false, or {"every"}',
    'Ties of a gambrel from break to break; false for none.',
  ),
  sections: z.optional(
    sections.check(
      z.describe(
        'Of a stepped roof: gables one after the other from end A, each with its own ridge. What a section leaves out it has from the main keys. Of two beside each other the one with the higher ridge has a gable wall between them, with studs from its own plates up, and the other ends against it. Figured, not yet played.',
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
  gablet: z.optional(
    gablet.check(
      z.describe(
        'Small gables that cut the hips of a hip roof short. With it rakeOverhang and gableStuds mean theirs; studs stand behind the header, flush with its lower edge.',
      ),
    ),
  ),
  joists: off(joists, 'false, or {"every", "height"}', 'Ceiling joists or rafter ties; false for none.'),
  collars: off(collars, 'false, or {"every"}', 'Collar ties in the upper third; false for none.'),
  vents: z.optional(vents.check(z.describe('Openings in the blocks. None unless said.'))),
  name: z.optional(
    z
      .string()
      .check(
        z.maxLength(60, 'at most 60 characters'),
        z.describe('What the crew calls it. Stands on the set card.'),
      ),
  ),
  site: z.optional(site),
});

export type RoofFile = z.infer<typeof roofSchema>;
