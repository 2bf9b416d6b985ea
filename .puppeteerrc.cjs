// Installing must work offline; `npm run setup` finds or fetches the browser instead.
module.exports = {skipDownload: true};
