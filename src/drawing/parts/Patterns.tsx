/** Pen textures shared by the parts: hatch for what is cut, loops for lagging. */
export function Patterns() {
  return (
    <defs>
      <pattern id="drawing-hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path class="drawing-hatch-line" d="M0 0V5" />
      </pattern>
      <pattern id="drawing-lag" width="8" height="6" patternUnits="userSpaceOnUse">
        <path class="drawing-hatch-line" d="M0 6q4 -9 8 0M0 3q4 -9 8 0" />
      </pattern>
    </defs>
  );
}
