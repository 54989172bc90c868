using System.Diagnostics;

namespace PowerCheck.Circuit.Simulator;

/// <summary>The program itself: where it is, and one run of it in a folder of its own.</summary>
public static class SimulatorProgram
{
    /// <summary>Environment variable that names the program where it is not on the path.</summary>
    public const string Variable = "POWERCHECK_NGSPICE";

    private const string Name = "ngspice";
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    /// <summary>The program's file; null where there is none.</summary>
    public static string? File { get; } = Find();

    // Runs a deck; the folder is the program's working folder, and the deck may write files into it.
    internal static string Run(string deck, string folder)
    {
        var file =
            File
            ?? throw new InvalidOperationException(
                $"{Name} is neither on the path nor in {Variable}."
            );
        var path = Path.Combine(folder, "deck.cir");
        System.IO.File.WriteAllText(path, deck);
        using var process = Process.Start(Start(file, folder))!;
        var printed = process.StandardOutput.ReadToEndAsync();
        var complained = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            throw new SimulatorException("The simulator did not come to an end.", deck, "");
        }
        return printed.GetAwaiter().GetResult() + "\n" + complained.GetAwaiter().GetResult();
    }

    private static ProcessStartInfo Start(string file, string folder) =>
        new(file, ["-n", "-b", "deck.cir"])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            UseShellExecute = false,
        };

    private static string? Find()
    {
        var named = Environment.GetEnvironmentVariable(Variable);
        if (!string.IsNullOrEmpty(named))
        {
            return System.IO.File.Exists(named) ? named : null;
        }
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        return folders
            .Where(folder => folder.Length > 0)
            .Select(folder => Path.Combine(folder, Name))
            .FirstOrDefault(System.IO.File.Exists);
    }
}
