process.on('exit', () => process.stderr.write(`\npeak ${process.resourceUsage().maxRSS}\n`));
