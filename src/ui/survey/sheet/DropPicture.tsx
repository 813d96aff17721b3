/** What counts as how far below the line: a floor that falls, read at two places. In mm on paper. */
export function DropPicture() {
  return (
    <svg
      className="drop-picture"
      viewBox="0 0 194 31"
      role="img"
      aria-label="How far the floor lies below the line"
    >
      <path d="M2 5H112" strokeDasharray="6 1.5 1 1.5" strokeWidth="0.5" />
      <text x="2" y="3.6">
        the line, 0
      </text>
      <path d="M2 23 112 28" strokeWidth="0.9" />
      <text x="2" y="29.5">
        the floor
      </text>
      <Reading x={34} to={24.4} words="1004" />
      <Reading x={88} to={26.9} words="1012" />
      <text x="120" y="6" fontWeight="700">
        Write how far BELOW the line.
      </text>
      <text x="120" y="11">
        Tape on the floor, read at the line;
      </text>
      <text x="120" y="15.5">
        no sign before it.
      </text>
      <text x="120" y="22">
        1012 is a lower floor than 1004:
      </text>
      <text x="120" y="26.5">
        the bigger the figure, the lower the floor.
      </text>
    </svg>
  )
}

function Reading({ x, to, words }: { readonly x: number; readonly to: number; readonly words: string }) {
  return (
    <>
      <path
        d={`M${x} 5V${to}M${x - 1.2} 7.5 ${x} 5 ${x + 1.2} 7.5M${x - 1.2} ${to - 2.5} ${x} ${to} ${x + 1.2} ${to - 2.5}`}
        strokeWidth="0.4"
      />
      <text x={x + 2} y="16" className="figure">
        {words}
      </text>
    </>
  )
}
