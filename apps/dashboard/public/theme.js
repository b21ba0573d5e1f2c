// Before the first paint, so that a night watch is not met by a white page. The switch itself: src/ui/theme.ts
const kept = localStorage.getItem('theme');
if (kept === 'day' || kept === 'night') document.documentElement.dataset.theme = kept;
