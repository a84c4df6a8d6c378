// Says that the app has stopped, which it can't do itself any longer.
{
  const WORDS = {
    en: ["Duskpot has stopped, and that is our fault. What was saved on this device is still there.", "Start it again"],
    es: ["Duskpot se ha detenido, y es culpa nuestra. Lo guardado en este dispositivo sigue ahí.", "Iniciar de nuevo"],
  };
  const say = (why) => {
    if (!(why instanceof WebAssembly.RuntimeError) || document.querySelector("[data-test=stopped]")) {
      return;
    }
    const [text, again] = WORDS[document.documentElement.lang] ?? WORDS.en;
    const make = (tag, kind, inside) => {
      const element = document.createElement(tag);
      element.className = kind;
      element.append(...inside);
      return element;
    };
    const button = make("button", "status-line__action", [again]);
    button.addEventListener("click", () => location.reload());
    const line = make("div", "status-line", [make("p", "status-line__text", [text]), button]);
    line.setAttribute("role", "alert");
    line.setAttribute("data-tone", "trouble");
    line.setAttribute("data-test", "stopped");
    document.body.prepend(line);
  };
  addEventListener("error", ({ error }) => say(error));
  addEventListener("unhandledrejection", ({ reason }) => say(reason));
}
