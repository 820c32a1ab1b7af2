/**
 * Random tests draw the same cases every time, so that a red run is red for everybody. Set LIMBECK_SEED to look
 * further; a case found that way becomes a test of its own.
 */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env['LIMBECK_SEED'] ?? 20_261) });
