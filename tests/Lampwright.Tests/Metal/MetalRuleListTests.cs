using Lampwright.Metal;

namespace Lampwright.Tests.Metal;

public sealed class MetalRuleListTests
{
    [Fact]
    public void Codes_are_in_order_and_every_rule_has_a_remedy()
    {
        Assert.Equal(
            MetalRules.All.Select(r => r.Code).Order(StringComparer.Ordinal).Distinct(),
            MetalRules.All.Select(r => r.Code)
        );
        Assert.All(MetalRules.All, r => Assert.Matches("^MET[0-9]{3}$", r.Code));
        Assert.All(MetalRules.All, r => Assert.EndsWith(".", r.Remedy, StringComparison.Ordinal));
    }
}
