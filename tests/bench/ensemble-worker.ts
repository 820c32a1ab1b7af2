/** One worker of the ensemble bench: computes the rows it is given and says when it is done. */
import { parentPort, workerData } from 'node:worker_threads';
import { runMember, type Design } from '../../sim/index.ts';

const { design, rows } = workerData as { readonly design: Design; readonly rows: readonly number[] };
parentPort?.postMessage(rows.map((row) => runMember(design, row)));
