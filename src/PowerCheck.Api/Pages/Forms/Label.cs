namespace PowerCheck.Api.Pages.Forms;

/// <summary>How a field is called, and what helps to fill it in.</summary>
/// <param name="Name">Its name in the words of the trade.</param>
/// <param name="Help">Where the figure stands or what it means; null where the name says enough.</param>
public sealed record Label(string Name, string? Help = null);
