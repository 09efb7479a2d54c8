import { answerRequest } from './answerRequest.js';

/*
 * The planner in a worker of a browser: what `planner.js` is made of. The solver's file lies beside it.
 */

type Problem = Parameters<typeof answerRequest>[0];

addEventListener('message', ({ data }: MessageEvent<Problem>) => {
  void answerRequest(data, (answer) => postMessage(answer));
});
