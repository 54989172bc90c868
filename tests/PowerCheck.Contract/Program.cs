using PowerCheck.Contract;

// Takes the document of a running service as the agreed one, unless callers would lose something without a raised version.
if (args is not [var address, var file])
{
    await Console.Error.WriteLineAsync("usage: ADDRESS FILE");
    return 2;
}

using var client = new HttpClient();
var served = ContractText.Ordered(await client.GetStringAsync(new Uri(address)));
var agreed = File.Exists(file) ? await File.ReadAllTextAsync(file) : null;
if (agreed is not null && !ContractChange.Raised(agreed, served))
{
    var removed = ContractChange.Removed(agreed, served);
    if (removed.Count > 0)
    {
        await Console.Error.WriteLineAsync(
            "Refused. Callers would lose, without a raised version:\n  "
                + string.Join("\n  ", removed)
        );
        return 1;
    }
}

await File.WriteAllTextAsync(file, served);
Console.WriteLine(
    string.Equals(agreed, served, StringComparison.Ordinal)
        ? "Nothing has changed."
        : $"Written: {file}"
);
return 0;
