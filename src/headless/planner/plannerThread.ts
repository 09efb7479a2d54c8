import { parentPort } from 'node:worker_threads';
import { answerRequest } from '../../planner/answerRequest.js';

/*
 * The planner in a thread of Node: the same planner and the same solver as in a worker of a browser.
 */

type Problem = Parameters<typeof answerRequest>[0];

parentPort?.on('message', (problem: Problem) => {
  void answerRequest(problem, (answer) => parentPort?.postMessage(answer));
});
