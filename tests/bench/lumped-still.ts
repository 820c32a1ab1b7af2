/**
 * A still reduced to an ordinary differential equation with the engine's own functions, so that two integrators can be
 * timed on one right-hand side: boiling water, six tub layers that a coil warms, eight oil constituents in two stocks.
 */
import { constituents, vapourPressure } from '../../sim/fluids/constituents.ts';
import { saturationPressure } from '../../sim/fluids/water.ts';
import {
  tableLatentHeat,
  tableLiquidConductivity,
  tableLiquidDensity,
  tableLiquidExpansivity,
  tableLiquidHeatCapacity,
  tableLiquidViscosity,
} from '../../sim/fluids/water-table.ts';
import { nusseltHorizontalCylinder, rayleighNumber } from '../../sim/transfer/natural-convection.ts';

const LAYERS = 6;
const OILS = 8;
const POWER = 1500;
const STEAM = 373.12;

export function lumpedStill(): { derivatives: (y: ArrayLike<number>, out: Float64Array) => void; start: number[] } {
  const chosen = constituents.slice(0, OILS);
  const ratio = chosen.map((row) => vapourPressure(row, STEAM) / saturationPressure(STEAM));
  const start = [
    8,
    ...Array<number>(LAYERS).fill(288.15),
    ...Array<number>(OILS).fill(0.002),
    ...Array<number>(OILS).fill(0.002),
  ];

  const conductance = (T: number): number => {
    const film = 0.5 * (STEAM + T);
    const k = tableLiquidConductivity(film);
    const rho = tableLiquidDensity(film);
    const nu = tableLiquidViscosity(film) / rho;
    const alpha = k / (rho * tableLiquidHeatCapacity(film));
    const Ra = rayleighNumber(tableLiquidExpansivity(film), STEAM - T, 0.012, nu, alpha, 9.80665);
    return (nusseltHorizontalCylinder(Ra, nu / alpha) * k) / 0.012;
  };

  const derivatives = (y: ArrayLike<number>, out: Float64Array): void => {
    const steam = POWER / tableLatentHeat(STEAM);
    out[0] = -steam;
    let left = POWER;
    for (let k = 0; k < LAYERS; k++) {
      const T = y[1 + k] as number;
      const heat = Math.min(left, conductance(T) * 0.03 * (STEAM - T));
      left -= heat;
      out[1 + k] = heat / (10 * tableLiquidHeatCapacity(T));
    }
    let moles = 0.001;
    for (let i = 0; i < OILS; i++) moles += (y[7 + i] as number) / 0.15;
    for (let i = 0; i < OILS; i++) {
      const released = 0.0008 * (y[7 + OILS + i] as number);
      const taken = (0.2 * steam * (ratio[i] as number) * (y[7 + i] as number)) / (0.018 * moles);
      out[7 + i] = released - taken;
      out[7 + OILS + i] = -released;
    }
  };
  return { derivatives, start };
}
