/** Working of the heat that a wanted rate of distillate needs. */
import type { BurnerSize } from '../answers/other-parts/burner.ts';
import { sheetOf, STEP, TABLES, writtenStep, type WorkingSheet } from './sheet.ts';

const MEAN = 'mean of the run at nine tenths of its highest rate and more';

export const burnerSheet = (size: BurnerSize): WorkingSheet =>
  sheetOf(
    ['burner', 'Power of the heat for a wanted rate', null],
    'What is lost to the room depends on how hot the pot is, not on how hard it boils, so it is taken from this run.',
    'the sentence on this page',
    writtenStep(
      'Heat that does not leave as distillate',
      '\\dot Q_l = \\dot Q_{pot}-\\dot m_0\\,r',
      [size.lost_W, 'W', 'balance of heat'],
      ['\\dot Q_{pot}', size.seenPotPower_W, 'W', 'heat into the pot', MEAN],
      ['\\dot m_0', size.seen_kg_s, 'kg/s', 'distillate', MEAN],
      ['r', size.latent_J_kg, 'J/kg', 'heat of evaporation', TABLES],
    ),
    writtenStep(
      'Heat into the pot for the wanted rate',
      '\\dot Q_w = \\dot m_w\\,r+\\dot Q_l',
      [size.potPower_W, 'W', 'balance of heat'],
      ['\\dot m_w', size.wanted_kg_s, 'kg/s', 'distillate that is wanted', 'chosen'],
      ['r', size.latent_J_kg, 'J/kg', 'heat of evaporation', TABLES],
      ['\\dot Q_l', size.lost_W, 'W', 'heat that does not leave as distillate', STEP],
    ),
    writtenStep(
      'Power of the source',
      'P = \\frac{\\dot Q_w}{\\eta}',
      [size.power_W, 'W', 'definition of the share'],
      ['\\dot Q_w', size.potPower_W, 'W', 'heat into the pot', STEP],
      ['\\eta', size.potPower_W / size.power_W, '1', 'share that reaches the pot', 'scenario: share to the pot'],
    ),
  );
