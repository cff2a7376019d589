using WearWatch.Worker.Commands;

return await CommandLine.RunAsync(args);
