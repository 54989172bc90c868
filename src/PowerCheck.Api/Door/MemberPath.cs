using System.Globalization;

namespace PowerCheck.Api.Door;

/// <summary>Where in the body the reader stands; written out only when something is wrong.</summary>
internal sealed class MemberPath
{
    private readonly string?[] names = new string?[RequestReader.MostDepth + 2];
    private readonly int[] positions = new int[RequestReader.MostDepth + 2];
    private int depth;

    public void Enter(string name) => names[depth++] = name;

    public void Enter(int position)
    {
        names[depth] = null;
        positions[depth++] = position;
    }

    public void Leave() => depth--;

    /// <summary>The path of a member of the object in which the reader stands.</summary>
    public string Of(string name) => depth == 0 ? name : $"{this}.{name}";

    public override string ToString() => string.Join('.', Enumerable.Range(0, depth).Select(Step));

    private string Step(int at) =>
        names[at] ?? positions[at].ToString(CultureInfo.InvariantCulture);
}
