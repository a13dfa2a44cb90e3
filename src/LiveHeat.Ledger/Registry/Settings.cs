using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Registry;

/// <summary>Small choices by name. What a name means is the server's business.</summary>
public sealed class Settings
{
    private readonly RegistryFile file;

    internal Settings(RegistryFile file) => this.file = file;

    /// <summary>The value, or null when it was never chosen.</summary>
    public Task<string?> Get(string key, CancellationToken cancellation) =>
        file.Read(context => context.Settings.AsNoTracking().SingleOrDefault(s => s.Key == key)?.Value, cancellation);

    /// <summary>Chooses a value; null takes the choice back.</summary>
    public Task Put(string key, string? value, CancellationToken cancellation) =>
        file.Write(
            context =>
            {
                var row = context.Settings.Find(key);
                switch ((row, value))
                {
                    case (null, null):
                        break;
                    case (null, _):
                        context.Settings.Add(new SettingRow { Key = key, Value = value });
                        break;
                    case (_, null):
                        context.Settings.Remove(row);
                        break;
                    default:
                        row.Value = value;
                        break;
                }

                return true;
            },
            cancellation);
}
