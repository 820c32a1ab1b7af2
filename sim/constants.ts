/** Constants of nature and agreed reference values, SI. */

/** Standard acceleration of free fall, m/s². ISO 80000-3, 3rd CGPM 1901, exact. */
export const STANDARD_GRAVITY = 9.80665;

/** Molar gas constant, J/(mol K). SI 2019, exact (2022 CODATA prints 8.314 462 618). */
export const GAS_CONSTANT = 8.31446261815324;

/** Stefan–Boltzmann constant, W/(m² K⁴). SI 2019, exact (CODATA prints 5.670 374 419e-8). */
export const STEFAN_BOLTZMANN = 5.670374419e-8;

/** Standard atmosphere, Pa. ISO 2533:1975 and 10th CGPM 1954, exact. */
export const STANDARD_ATMOSPHERE = 101_325;

/** 0 °C in kelvin. SI, exact. */
export const ZERO_CELSIUS = 273.15;

/** Molar mass of water, kg/mol. IAPWS R6-95(2018), 18.015 268 g/mol. */
export const WATER_MOLAR_MASS = 0.018015268;

/** Molar mass of dry air, kg/mol. ISO 2533:1975, 28.964 420 g/mol. */
export const DRY_AIR_MOLAR_MASS = 0.02896442;
