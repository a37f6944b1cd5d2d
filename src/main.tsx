import { render } from 'preact';

const root = document.getElementById('sheet');
if (root) render(<main>Jarwright</main>, root);
