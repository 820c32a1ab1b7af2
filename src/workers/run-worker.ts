/** The worker of the first load: runs, and nothing else of the model. */
import { runTasks } from './run-tasks.ts';
import { serve } from './serve.ts';

serve(runTasks);
