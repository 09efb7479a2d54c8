// Points git at the project's own hooks (format check on commit). Quiet where there is no git checkout.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

if (existsSync('.git')) spawnSync('git', ['config', 'core.hooksPath', '.githooks'], { stdio: 'ignore' });
