/** The energy ledger as a flow diagram: places in three columns, bands as wide as the energy they carry. */
import { sankey, sankeyLinkHorizontal, type SankeyLink, type SankeyNode } from 'd3-sankey';
import type { EnergyLedger, EnergyPlace } from '../model/energy-ledger.ts';
import type { Token } from '../model/palette.ts';
import { spreadLabels } from '../model/spread-labels.ts';

interface PlaceDatum {
  readonly place: EnergyPlace;
}
interface FlowDatum {
  readonly value: number;
}
type Node = SankeyNode<PlaceDatum, FlowDatum>;
type Link = SankeyLink<PlaceDatum, FlowDatum>;

export interface PlaceWords {
  readonly label: string;
  readonly ink: Token;
  readonly tint: Token;
}

export const PLACE_WORDS: Record<EnergyPlace, PlaceWords> = {
  fuel: { label: 'Fuel or current', ink: 'copper', tint: 'copper' },
  missed: { label: 'Missed the pot', ink: 'ink-muted', tint: 'border' },
  still: { label: 'Into the still', ink: 'copper', tint: 'copper' },
  losses: { label: 'Lost to the air', ink: 'ink-muted', tint: 'border' },
  condenser: { label: 'Cooling water', ink: 'water', tint: 'water' },
  products: { label: 'Warm distillate', ink: 'water', tint: 'water-tint' },
  escape: { label: 'Escaped vapour', ink: 'alarm', tint: 'alarm' },
  stored: { label: 'Still in the still', ink: 'copper', tint: 'copper-tint' },
  drawn: { label: 'Heat it started with', ink: 'copper', tint: 'copper-tint' },
  open: { label: 'Unaccounted', ink: 'alarm', tint: 'alarm' },
};

/** From top to bottom in their column. */
const ORDER: readonly EnergyPlace[] = [
  'fuel',
  'drawn',
  'still',
  'condenser',
  'products',
  'escape',
  'losses',
  'stored',
  'open',
  'missed',
];

export interface DiagramPlace {
  readonly place: EnergyPlace;
  readonly energy_J: number;
  readonly x: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly label: { readonly x: number; readonly y: number | null; readonly anchor: 'start' | 'end' };
}

export interface DiagramFlow {
  readonly from: EnergyPlace;
  readonly to: EnergyPlace;
  readonly energy_J: number;
  readonly path: string;
  readonly width: number;
  readonly tint: Token;
}

export interface EnergyDiagram {
  readonly places: readonly DiagramPlace[];
  readonly flows: readonly DiagramFlow[];
}

export interface DiagramSize {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly height: number;
  readonly textScale: number;
}

const BAR = 6;
/** Between places in a column: two lines of words. */
const GAP = 38;

export function energyDiagram(ledger: EnergyLedger, size: DiagramSize): EnergyDiagram {
  if (ledger.flows.length === 0) return { places: [], flows: [] };
  const used = ORDER.filter((place) => ledger.flows.some(({ from, to }) => from === place || to === place));
  const graph = sankey<PlaceDatum, FlowDatum>()
    .nodeWidth(BAR)
    .nodePadding(GAP * size.textScale)
    .nodeSort((a, b) => ORDER.indexOf(a.place) - ORDER.indexOf(b.place))
    .linkSort((a, b) => endOrder(a) - endOrder(b))
    .extent([
      [size.left, size.top],
      [size.right, size.top + size.height],
    ])({
    nodes: used.map((place) => ({ place })),
    links: ledger.flows.map(({ from, to, energy_J }) => ({
      source: used.indexOf(from),
      target: used.indexOf(to),
      value: energy_J,
    })),
  });
  const horizontal = sankeyLinkHorizontal<PlaceDatum, FlowDatum>();
  return {
    places: withLabels(graph.nodes, size),
    flows: graph.links.map((link) => ({
      from: placeAt(link.source),
      to: placeAt(link.target),
      energy_J: link.value,
      path: horizontal(link) ?? '',
      width: link.width ?? 0,
      tint: PLACE_WORDS[placeAt(link.target) === 'still' ? placeAt(link.source) : placeAt(link.target)].tint,
    })),
  };
}

const placeAt = (end: Link['source']): EnergyPlace => (end as Node).place;
const endOrder = (link: Link): number =>
  ORDER.indexOf(placeAt(link.target)) * 100 + ORDER.indexOf(placeAt(link.source));

/** Columns nearer than this can't hold words side by side. */
const CLOSE_COLUMNS = 230;

/** Height of the two lines of words beside a bar. */
const blockHeight = (textScale: number): number => 34 * textScale;

/** Words stand above a source, left of the bar between, right of an end. */
function withLabels(nodes: readonly Node[], { top, height, textScale }: DiagramSize): readonly DiagramPlace[] {
  const block = blockHeight(textScale);
  const ends = nodes.filter(({ sourceLinks }) => sourceLinks?.length === 0);
  const middles = spreadLabels(
    ends.map((node) => ({ at: middleOf(node), size: block, rank: node.value ?? 0 })),
    top - block / 2,
    top + height + block / 2,
  );
  /** Words left of a bar in the next column reach over a source's words where the columns stand close. */
  const highestBeside = (source: Node): number =>
    Math.min(
      ...nodes
        .filter(
          (node) =>
            !ends.includes(node) &&
            (node.targetLinks?.length ?? 0) > 0 &&
            (node.x0 ?? 0) - (source.x0 ?? 0) < CLOSE_COLUMNS * textScale,
        )
        .map(middleOf),
    );
  const labelOf = (node: Node): DiagramPlace['label'] => {
    const end = ends.indexOf(node);
    if (end >= 0) return { x: (node.x1 ?? 0) + 8, y: middles[end] ?? null, anchor: 'start' };
    if (node.targetLinks?.length === 0)
      return {
        x: node.x0 ?? 0,
        y: Math.min((node.y0 ?? 0) - block / 2 - 3, highestBeside(node) - block),
        anchor: 'start',
      };
    return { x: (node.x0 ?? 0) - 8, y: middleOf(node), anchor: 'end' };
  };
  return nodes.map((node) => ({
    place: node.place,
    energy_J: node.value ?? 0,
    x: node.x0 ?? 0,
    top: node.y0 ?? 0,
    width: (node.x1 ?? 0) - (node.x0 ?? 0),
    height: (node.y1 ?? 0) - (node.y0 ?? 0),
    label: labelOf(node),
  }));
}

const middleOf = ({ y0, y1 }: Node): number => ((y0 ?? 0) + (y1 ?? 0)) / 2;
