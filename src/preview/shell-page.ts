/** The page around the previewed item: what there is on the left, the item's sheet with its findings on the right. */
export const shellPage = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>Swatchleaf preview</title>
<style>
:root { color: #2d2926; background: #f4f1ec; font: 15px/1.45 system-ui, sans-serif; }
body { display: grid; grid-template: auto 1fr / 17rem 1fr; height: 100vh; margin: 0; }
header { grid-column: 1 / -1; display: flex; gap: 1.2rem; align-items: baseline; padding: .5rem 1rem; border-bottom: 1px solid #c9c0b6; background: #fff; }
header strong { font-size: 1.05rem; }
#trouble { color: #8a1c1c; font-weight: 600; }
#trouble:empty { display: none; }
#counts { margin-left: auto; color: #5b534c; }
nav { overflow: auto; padding: .5rem 0 2rem; border-right: 1px solid #c9c0b6; }
nav h2 { margin: .9rem 1rem .2rem; font-size: .8rem; color: #5b534c; }
nav button { display: flex; gap: .5rem; width: 100%; padding: .2rem 1rem; border: 0; background: none; color: inherit; font: inherit; text-align: left; cursor: pointer; }
nav button:hover, nav button:focus-visible { background: #e7e1d8; }
nav button[aria-current] { background: #fff; font-weight: 600; }
nav .id { flex: none; width: 3.2rem; font-variant-numeric: tabular-nums; }
nav .title { flex: 1; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
nav .mark { flex: none; color: #8a1c1c; font-variant-numeric: tabular-nums; }
#elsewhere { margin: .5rem 1rem; padding: 0; list-style: none; font-size: .85rem; color: #8a1c1c; }
iframe { width: 100%; height: 100%; border: 0; background: #fff; }
@media (max-width: 50rem) { body { grid-template: auto 9rem 1fr / 1fr; } nav { border-right: 0; border-bottom: 1px solid #c9c0b6; } }
</style>
<script src="follow.js" defer></script>
</head>
<body>
<header><strong id="shown">Swatchleaf</strong><span id="trouble" role="status"></span><span id="counts"></span></header>
<nav aria-label="Items"><ul id="elsewhere"></ul><div id="items"></div></nav>
<iframe id="sheet" title="The item's sheet" sandbox="allow-same-origin"></iframe>
</body>
</html>
`;
