using System.Reflection;
using System.Text.RegularExpressions;
using Lampwright.Evaluation;
using NetArchTest.Rules;

namespace Lampwright.Tests.House;

/// <summary>Which room may see which. Read from the compiled core and, where a compiler leaves no trace, from its source.</summary>
public sealed partial class RoomTests
{
    private static readonly Assembly Core = typeof(Evaluator).Assembly;

    // Each room with those it may see. A station knows what lies below all of them, and no other station.
    private static readonly Dictionary<string, string[]> MaySee = new()
    {
        ["Quantities"] = [],
        ["Geometry"] = ["Quantities"],
        ["Tables"] = ["Quantities", "Geometry"],
        ["Findings"] = ["Quantities", "Geometry", "Tables"],
        ["Design"] = ["Quantities", "Geometry", "Tables", "Findings"],
        ["Steps"] = ["Quantities", "Geometry", "Tables", "Findings"],
        ["Heat"] = ["Quantities", "Geometry", "Tables", "Findings"],
        ["Light"] = ["Quantities", "Geometry", "Tables", "Findings"],
        ["Metal"] = ["Quantities", "Geometry", "Tables", "Findings"],
        ["FitUp"] = ["Quantities", "Geometry", "Tables", "Findings"],
        ["Balance"] = ["Quantities", "Geometry", "Tables", "Findings"],
        ["Readings"] = ["Quantities", "Geometry", "Tables", "Findings"],
    };

    private static readonly string[] Rooms = [.. MaySee.Keys, "Evaluation"];

    public static TheoryData<string> RoomsWithRules => new(MaySee.Keys);

    [Theory]
    [MemberData(nameof(RoomsWithRules))]
    public void A_room_sees_only_what_lies_below_it(string room)
    {
        var hidden = Rooms.Where(r => r != room && !MaySee[room].Contains(r)).Select(r => "Lampwright." + r).ToArray();
        var result = Types
            .InAssembly(Core)
            .That()
            .ResideInNamespaceMatching($@"^Lampwright\.{room}(\.|$)")
            .ShouldNot()
            .HaveDependencyOnAny(hidden)
            .GetResult();
        Assert.True(
            result.IsSuccessful,
            $"{room} sees what it must not: {string.Join(", ", result.FailingTypeNames ?? [])}"
        );
    }

    /// <summary>A constant is copied by the compiler and leaves no dependency behind; the source does.</summary>
    [Theory]
    [MemberData(nameof(RoomsWithRules))]
    public void The_source_of_a_room_names_only_what_lies_below_it(string room)
    {
        foreach (var file in Repository.Files($"src/Lampwright/{room}", ".cs"))
        {
            foreach (Match named in NamedRoom().Matches(Code(file)))
            {
                var other = named.Groups[1].Value;
                Assert.True(
                    other == room || !Rooms.Contains(other) || MaySee[room].Contains(other),
                    $"{file} names {named.Value}."
                );
            }
        }
    }

    [Fact]
    public void Every_folder_of_the_core_is_a_room_with_rules() =>
        Assert.Equal(
            Rooms.Order(StringComparer.Ordinal),
            Repository
                .Files("src/Lampwright", ".cs")
                .Select(f => f.Split('/'))
                .Where(p => p.Length > 3)
                .Select(p => p[2])
                .Distinct()
                .Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Stations_have_no_public_constants()
    {
        foreach (var type in Core.GetExportedTypes())
        {
            var constants = type.GetFields(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
                .Where(f => f.IsLiteral && !type.IsEnum);
            Assert.True(
                !constants.Any(),
                $"{type.FullName} has public constants: {string.Join(", ", constants.Select(c => c.Name))}"
            );
        }
    }

    [Theory]
    [InlineData("src/Lampwright", new string[0])]
    [InlineData("src/Lampwright.Files", new[] { "Lampwright" })]
    [InlineData("src/Lampwright.Web", new[] { "Lampwright.Files" })]
    [InlineData("src/Lampwright.Cli", new[] { "Lampwright.Web" })]
    public void Projects_point_one_way(string project, string[] sees)
    {
        var file = Repository.Files(project, ".csproj").Single();
        var seen = ProjectReference().Matches(Repository.Text(file)).Select(m => m.Groups[1].Value);
        Assert.Equal(sees, seen);
    }

    /// <summary>Code without comments, texts of documentation and blank ends.</summary>
    internal static string Code(string file) => Comment().Replace(Repository.Text(file), "");

    [GeneratedRegex(@"Lampwright\.([A-Z][A-Za-z]+)")]
    private static partial Regex NamedRoom();

    [GeneratedRegex(@"//[^\n]*")]
    private static partial Regex Comment();

    [GeneratedRegex(@"<ProjectReference Include=""[^""]*/([^/""]+)\.csproj""")]
    private static partial Regex ProjectReference();
}
