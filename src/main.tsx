import { render } from 'solid-js/web';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/print.css';

const root = document.getElementById('app');
if (!root) throw new Error('index.html has no element with the id "app"');

render(
  () => (
    <main>
      <h1>Limbeck</h1>
    </main>
  ),
  root,
);
