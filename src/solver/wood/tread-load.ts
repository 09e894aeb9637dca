/** A tread between two supports under a load at mid-span and one spread over it; inches and pounds. */
export interface TreadLoad {
  readonly deflection: number;
  readonly spanRatio: number;
  readonly bendingStress: number;
  readonly shearStress: number;
}

export interface TreadLoadGiven {
  readonly span: number;
  readonly depth: number;
  readonly thickness: number;
  /** Pounds at mid-span. */
  readonly load: number;
  /** Pounds to the inch of span. */
  readonly uniform: number;
  /** Modulus of elasticity in psi. */
  readonly elasticity: number;
}

/**
 * Simple span, rectangular section, bending deflection: Wood Handbook, FPL-GTR-190, Table 9-1 (1/48 for a load at mid-span, 5/384 for a
 * uniform one, of total load x span³ / EI) and equations 9-9; shear 3V/2bh, without the shear deflection.
 */
export const treadLoad = ({ span, depth, thickness, load, uniform, elasticity }: TreadLoadGiven): TreadLoad => {
  const inertia = (depth * thickness ** 3) / 12;
  const section = (depth * thickness ** 2) / 6;
  const total = uniform * span;
  const deflection = ((load / 48 + (5 * total) / 384) * span ** 3) / (elasticity * inertia);
  return {
    deflection,
    spanRatio: span / deflection,
    bendingStress: ((load * span) / 4 + (total * span) / 8) / section,
    shearStress: (3 * (load / 2 + total / 2)) / (2 * depth * thickness),
  };
};
