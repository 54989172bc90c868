using PowerCheck.Contract;

namespace PowerCheck.Api.Tests.Documents;

/// <summary>A member that callers rely on does not vanish without a raised version.</summary>
public class ContractTests
{
    private const string Old = """
        {
          "info": { "version": "1.0.0" },
          "paths": { "/a": { "get": {}, "post": {} }, "/b": { "get": {} } },
          "components": { "schemas": { "A": { "properties": { "x": {}, "y": { "enum": ["p", "q"] } } } } }
        }
        """;

    [Fact]
    public void What_was_removed_is_named() =>
        Assert.Equal(
            ["paths./a.post", "paths./b", "schemas.A.x", "schemas.A.y = q"],
            ContractChange.Removed(
                Old,
                """
                {
                  "paths": { "/a": { "get": {} } },
                  "components": { "schemas": { "A": { "properties": { "y": { "enum": ["p"] } } } } }
                }
                """
            )
        );

    [Fact]
    public void What_was_added_is_not() =>
        Assert.Empty(ContractChange.Removed(Old.Replace("\"x\": {},", ""), Old));

    [Theory]
    [InlineData("1.0.0", "1.0.0", false)]
    [InlineData("1.0.0", "1.0.1", true)]
    [InlineData("1.9.0", "1.10.0", true)]
    [InlineData("1.1.0", "1.0.9", false)]
    public void A_version_counts_as_raised_when_it_is_higher(
        string old,
        string fresh,
        bool raised
    ) =>
        Assert.Equal(
            raised,
            ContractChange.Raised(Old.Replace("1.0.0", old), Old.Replace("1.0.0", fresh))
        );
}
