/** GET /problems/{type}: what a problem means and what to do, one page for each type. */
import { PROBLEM_TYPES } from '@garboard/contract/problem.ts';
import { html } from 'hono/html';
import { routes } from '../openapi/declare.ts';
import { humanPage } from '../page/human-page.ts';
import { problem } from './problem.ts';
import { PROBLEMS } from './problem-table.ts';

export function problemPagesRoute() {
  return routes()
    .get('/problems', (c) =>
      humanPage(c, 200, 'What the API can answer instead', [
        ...PROBLEM_TYPES.map(
          (type) => html`<a href="/problems/${type}">${PROBLEMS[type].title}</a> (${PROBLEMS[type].status})`,
        ),
      ]),
    )
    .get('/problems/:type', (c) => {
      const type = PROBLEM_TYPES.find((each) => each === c.req.param('type'));
      if (!type) return problem(c, 'not-found');
      const { status, title, means, whatToDo } = PROBLEMS[type];
      return humanPage(c, 200, title, [
        means,
        whatToDo,
        html`<span class="quiet">Status ${status}, type <code>/problems/${type}</code>.</span>`,
      ]);
    });
}
