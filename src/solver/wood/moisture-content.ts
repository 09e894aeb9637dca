const CELSIUS_PER_FAHRENHEIT = 5 / 9;
const FREEZING_FAHRENHEIT = 32;

export const celsius = (fahrenheit: number): number => (fahrenheit - FREEZING_FAHRENHEIT) * CELSIUS_PER_FAHRENHEIT;

/**
 * Equilibrium moisture content of wood in percent, at a temperature in degrees Celsius and a relative humidity from 0 to 1: the
 * Hailwood-Horrobin form of the Wood Handbook, FPL-GTR-190, equation 4-5, with its Celsius constants (FPL-RN-0268).
 */
export const moistureContent = (temperature: number, humidity: number): number => {
  const t = temperature;
  const w = 349 + 1.29 * t + 0.0135 * t * t;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const kh = k * humidity;
  return (1800 / w) * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh));
};
