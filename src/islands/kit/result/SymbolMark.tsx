/** A symbol as it stands in the formula: "theta_s" as an italic theta with a small s. */
const greek: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  epsilon: 'ε',
  zeta: 'ζ',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'µ',
  nu: 'ν',
  xi: 'ξ',
  pi: 'π',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  chi: 'χ',
  psi: 'ψ',
  omega: 'ω',
  Gamma: 'Γ',
  Delta: 'Δ',
  Theta: 'Θ',
  Lambda: 'Λ',
  Pi: 'Π',
  Sigma: 'Σ',
  Phi: 'Φ',
  Psi: 'Ψ',
  Omega: 'Ω',
};

export function SymbolMark({ name }: { readonly name: string }) {
  const [head = '', below] = name.split('_');
  const letter = greek[head] ?? head;
  // As in the formula: one letter leans, a word stands upright.
  return (
    <span class="calc-symbol">
      {letter.length === 1 ? <i>{letter}</i> : letter}
      {below !== undefined && <sub>{greek[below] ?? below}</sub>}
    </span>
  );
}
