using Lampwright.Cli;

using var terminal = Terminal.OfThisProcess();
using var interrupt = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    pressed.Cancel = true;
    interrupt.Cancel();
};
return await CommandLine.RunAsync(args, terminal, interrupt.Token);
