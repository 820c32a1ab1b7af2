/** Upright cylinders, which the model makes of every vessel: exact geometry in metres. */

/** Area of a circle, m²: π D²/4. @param D diameter, m */
export const circleArea = (D: number): number => (Math.PI / 4) * D ** 2;

/** Volume of a cylinder, m³: π D² H/4. @param D diameter, @param H height, m */
export const cylinderVolume = (D: number, H: number): number => circleArea(D) * H;

/** Height to which a volume fills an upright cylinder, m: 4V/(π D²). @param V volume, m³; @param D diameter, m */
export const cylinderHeight = (V: number, D: number): number => V / circleArea(D);

/** Diameter of a cylinder of a volume and a height, m: √[4V/(π H)]. @param V volume, m³; @param H height, m */
export const cylinderDiameter = (V: number, H: number): number => Math.sqrt(V / (H * (Math.PI / 4)));
