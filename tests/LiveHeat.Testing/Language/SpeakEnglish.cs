using System.Globalization;
using System.Runtime.CompilerServices;

namespace LiveHeat.Testing.Language;

/// <summary>Tests read English words whatever language the machine has.</summary>
internal static class SpeakEnglish
{
#pragma warning disable CA2255 // Every test project compiles this file into itself.
    [ModuleInitializer]
    internal static void Begin() => CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");
#pragma warning restore CA2255
}
