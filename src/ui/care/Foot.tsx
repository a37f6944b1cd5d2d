/** How far the numbers can be trusted, and what the page is not. */
export function Foot() {
  return (
    <footer class="foot">
      <p>
        Grams are the authority, spoons the convenience: spoons and cups here are level. Volumes come from the densities
        of what is in the milk (Choi and Okos, 1986), which are a little low: 0.25 % for water, 0.3 to 0.5 % for sugar
        solutions, under 1 mL in 200. Nothing here is medical or legal advice: local food law and licensed practice come
        first.
      </p>
      <p>
        <a href="licences.txt">Licences of this page and of what it is built with</a>
      </p>
    </footer>
  );
}
