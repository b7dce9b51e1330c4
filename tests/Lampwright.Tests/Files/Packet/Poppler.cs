using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Lampwright.Tests.Files.Packet;

/// <summary>A page as an independent program renders it: grey values, 0 black.</summary>
internal sealed record Raster(int Width, int Height, int Dpi, byte[] Pixels)
{
    public bool IsDark(int x, int y) => x >= 0 && y >= 0 && x < Width && y < Height && Pixels[(y * Width) + x] < 128;

    public double Mm(double pixels) => pixels * 25.4 / Dpi;

    public int Px(double mm) => (int)Math.Round(mm / 25.4 * Dpi);
}

/// <summary>Renders pages with pdftoppm of poppler-utils, or says that it is not there.</summary>
internal static class Poppler
{
    public static Raster Page(byte[] pdf, int page, int dpi = 400)
    {
        var folder = Directory.CreateTempSubdirectory("lampwright-poppler-");
        try
        {
            var file = Path.Combine(folder.FullName, "in.pdf");
            File.WriteAllBytes(file, pdf);
            var start = new ProcessStartInfo("pdftoppm") { RedirectStandardError = true };
            foreach (var argument in new[] { "-r", N(dpi), "-f", N(page), "-l", N(page), "-gray", "-singlefile", file })
            {
                start.ArgumentList.Add(argument);
            }

            var output = Path.Combine(folder.FullName, "out");
            start.ArgumentList.Add(output);
            using var process = Started(start);
            var errors = process.StandardError.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, $"pdftoppm ended with {process.ExitCode}: {errors}");
            return Read(File.ReadAllBytes(output + ".pgm"), dpi);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static Process Started(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start)!;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Assert.Skip("pdftoppm is not installed (Debian: poppler-utils)");
            throw;
        }
    }

    /// <summary>Reads a binary grey map (Netpbm P5).</summary>
    private static Raster Read(byte[] bytes, int dpi)
    {
        var at = 0;
        string Word()
        {
            while (char.IsWhiteSpace((char)bytes[at]))
            {
                at++;
            }

            var word = new StringBuilder();
            while (!char.IsWhiteSpace((char)bytes[at]))
            {
                word.Append((char)bytes[at++]);
            }

            return word.ToString();
        }

        Assert.Equal("P5", Word());
        var (width, height) = (
            int.Parse(Word(), CultureInfo.InvariantCulture),
            int.Parse(Word(), CultureInfo.InvariantCulture)
        );
        Assert.Equal("255", Word());
        return new(width, height, dpi, bytes[(at + 1)..]);
    }

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);
}
