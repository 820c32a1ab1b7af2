/** A worker that carries out any task. */
import { analysisTasks } from './analysis-tasks.ts';
import { runTasks } from './run-tasks.ts';
import { serve } from './serve.ts';

serve({ ...runTasks, ...analysisTasks });
