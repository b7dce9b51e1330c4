using Lampwright.Files.Drawings;

namespace Lampwright.Tests.Files.Drawings;

public sealed class SafeNameTests
{
    [Theory]
    [InlineData("sink_tray", "sink_tray")]
    [InlineData("../../etc/passwd", "______etc_passwd")]
    [InlineData("", "_")]
    [InlineData("con", "_con")]
    [InlineData("a b\r\nc", "a_b__c")]
    public void A_name_never_leaves_its_folder(string name, string safe) => Assert.Equal(safe, SafeName.Of(name));

    [Fact]
    public void Names_that_would_meet_are_told_apart() =>
        Assert.Equal(["a_b", "a_b_2", "A_B_3"], SafeName.Of(["a b", "a_b", "A_B"]));
}
