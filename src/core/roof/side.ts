/** The two eave sides and the two ends of a building, the walls under them, and how they are named in ids. */
export type Side = 'street' | 'yard';
export type End = 'A' | 'B';
export type Wall = Side | End;

export const sides: readonly Side[] = ['street', 'yard'];
export const ends: readonly End[] = ['A', 'B'];

/** Sign of y on a side: street is y < 0, yard is y > 0. */
export const signOf = (side: Side): 1 | -1 => (side === 'yard' ? 1 : -1);

export const across = (side: Side): Side => (side === 'yard' ? 'street' : 'yard');
