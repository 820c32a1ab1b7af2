/** The works that the printed figures stand in. */
import { work } from './printed.ts';

export const incropera = work('Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer, 6th ed.');
export const cengel = work('Cengel, Heat and Mass Transfer: A Practical Approach, 3rd ed.');
export const holman = work('Holman, Heat Transfer, SI edition');
export const lienhard = work('Lienhard and Lienhard, A Heat Transfer Textbook');
export const dutta = work('Dutta, Heat Transfer: Principles and Applications');
export const kern = work('Kern, Process Heat Transfer');
export const coulson = work('Coulson and Richardson, Chemical Engineering, vol. 1, 6th ed.');
export const sinnott = work("Sinnott, Coulson and Richardson's Chemical Engineering, vol. 6, 4th ed.");
export const geankoplis = work('Geankoplis, Transport Processes and Unit Operations, 3rd ed.');
export const mccabe = work('McCabe, Smith and Harriott, Unit Operations of Chemical Engineering, 5th ed.');
export const deNevers = work('de Nevers, Fluid Mechanics for Chemical Engineers');
export const silla = work('Silla, Chemical Process Engineering: Design and Economics');
export const abramowitz = work('Abramowitz and Stegun, Handbook of Mathematical Functions');
