/**
 * How fast a cone softens at a temperature, learnt from the temperatures the chart gives for it
 * at different rates.
 *
 * The model: a cone is down when the integral of exp(−E/RT) over the time of the firing has grown
 * to a threshold of its own. Energy and threshold are fitted to the cone's self-supporting chart
 * values by least squares of the temperature. The energy is an apparent one: it stands for
 * melting and dissolving as much as for flow.
 */
import { type Cone, chartedCones } from "../terms/cones.ts";
import { chartValues } from "./chart.ts";

/** 0 °C in kelvin, exact by definition of the Celsius scale. */
export const iceInKelvin = 273.15;

/** The rate at which cones are compared, in °C an hour: the chart's middle column. */
export const referenceRate = 60;

export interface ConeKinetics {
  readonly cone: Cone;
  /** Apparent energy divided by the gas constant, in kelvin. */
  readonly kelvin: number;
  /** Natural logarithm of the threshold, which is in hours. */
  readonly lnThreshold: number;
}

/** A cone's end point at a steady rate. */
export interface EndPoint {
  /** °C an hour. */
  readonly ratePerHour: number;
  readonly celsius: number;
}

/** The temperature in °C at which the model says the cone is down when climbed at a steady rate. */
export function modelledTemperature(kinetics: ConeKinetics, ratePerHour: number): number {
  const target = kinetics.lnThreshold + Math.log(ratePerHour);
  return climbEnd(kinetics.kelvin, target) - iceInKelvin;
}

/** How many °C hotter the end point lies for a rate e times as fast, at the reference rate. */
export function degreesPerLogOfRate(kinetics: ConeKinetics): number {
  const end = modelledTemperature(kinetics, referenceRate) + iceInKelvin;
  return 1 / slopeOfLnClimb(kinetics.kelvin, end);
}

/**
 * Fits a cone's energy and threshold to its end points at two or more rates (Gauss–Newton; the
 * residuals are in °C). Two rates settle both exactly.
 */
export function fitConeKinetics(cone: Cone, endPoints: readonly EndPoint[]): ConeKinetics {
  let fit = firstGuess(cone, endPoints);
  for (let i = 0; i < 30; i += 1) fit = improve(fit, endPoints);
  return fit;
}

/** Every charted cone, coolest first, fitted to all the rates the chart has for it. */
export const coneKinetics: readonly ConeKinetics[] = chartedCones.map((cone) =>
  fitConeKinetics(cone, chartValues(cone)),
);

/** Takes the slowest and the fastest rate: temperature rises by RT²/E per logarithm of rate. */
function firstGuess(cone: Cone, endPoints: readonly EndPoint[]): ConeKinetics {
  const slowest = endPoints[0];
  const fastest = endPoints[endPoints.length - 1];
  if (!slowest || !fastest || slowest === fastest)
    throw new RangeError(`cone ${cone} needs end points at two rates to be fitted`);
  const perLog =
    (fastest.celsius - slowest.celsius) / Math.log(fastest.ratePerHour / slowest.ratePerHour);
  const end = fastest.celsius + iceInKelvin;
  const kelvin = end ** 2 / perLog;
  return { cone, kelvin, lnThreshold: lnClimb(kelvin, end) - Math.log(fastest.ratePerHour) };
}

function improve(fit: ConeKinetics, endPoints: readonly EndPoint[]): ConeKinetics {
  const nudge = fit.kelvin * 1e-5;
  let [aa, ab, bb, ar, br] = [0, 0, 0, 0, 0];
  for (const { ratePerHour, celsius } of endPoints) {
    const modelled = modelledTemperature(fit, ratePerHour);
    const end = modelled + iceInKelvin;
    const byThreshold = 1 / slopeOfLnClimb(fit.kelvin, end);
    const lnByKelvin =
      (lnClimb(fit.kelvin + nudge, end) - lnClimb(fit.kelvin - nudge, end)) / (2 * nudge);
    const byKelvin = -lnByKelvin * byThreshold;
    const residual = celsius - modelled;
    aa += byKelvin ** 2;
    ab += byKelvin * byThreshold;
    bb += byThreshold ** 2;
    ar += byKelvin * residual;
    br += byThreshold * residual;
  }
  const determinant = aa * bb - ab ** 2;
  return {
    cone: fit.cone,
    kelvin: fit.kelvin + (ar * bb - br * ab) / determinant,
    lnThreshold: fit.lnThreshold + (br * aa - ar * ab) / determinant,
  };
}

/** The kelvin at which lnClimb reaches a value. Newton from below never overshoots: it is concave. */
function climbEnd(kelvin: number, target: number): number {
  let end = 500;
  for (let i = 0; i < 60; i += 1) {
    const step = (target - lnClimb(kelvin, end)) / slopeOfLnClimb(kelvin, end);
    end += step;
    if (Math.abs(step) < 1e-10) break;
  }
  return end;
}

/**
 * Natural logarithm of ∫ exp(−kelvin/T) dT from 0 to `end`, in kelvin: a climb at one kelvin an
 * hour. The rational approximation of Senum & Yang, J. Therm. Anal. 11 (1977) 445 (from memory;
 * compared with a numerical integral in the checks). What lies below room temperature is nothing.
 */
function lnClimb(kelvin: number, end: number): number {
  const x = kelvin / end;
  const above = x ** 3 + 18 * x ** 2 + 86 * x + 96;
  const below = x ** 4 + 20 * x ** 3 + 120 * x ** 2 + 240 * x + 120;
  return Math.log(kelvin) - x - Math.log(x) + Math.log(above / below);
}

/** The slope of lnClimb: its integrand at the end, over the whole of it. */
function slopeOfLnClimb(kelvin: number, end: number): number {
  return Math.exp(-kelvin / end - lnClimb(kelvin, end));
}
