/** A task by its name, carried out on the page where no worker will live. */
import type { analysisTasks } from './analysis-tasks.ts';
import { runTasks } from './run-tasks.ts';

export type Tasks = typeof runTasks & typeof analysisTasks;
export type TaskName = keyof Tasks;
export type TaskArguments<K extends TaskName> = Parameters<Tasks[K]>;
export type TaskAnswer<K extends TaskName> = ReturnType<Tasks[K]>;

export async function perform<K extends TaskName>(name: K, given: TaskArguments<K>): Promise<TaskAnswer<K>> {
  const tasks: Partial<Tasks> = name in runTasks ? runTasks : (await import('./analysis-tasks.ts')).analysisTasks;
  const task = tasks[name] as (...values: TaskArguments<K>) => TaskAnswer<K>;
  return task(...given);
}
